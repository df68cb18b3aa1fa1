import { expect, test } from "vitest";
import { className, readPage, styleSheet } from "../../scripts/build/page.ts";

const page = (body: string) =>
  `<!DOCTYPE html><html><head><meta charset="utf-8"><title>T</title></head><body>${body}</body></html>`;

test("style attributes of an equation become classes, and nothing else changes", () => {
  const read = readPage(
    page('<p>π &amp; <span class="katex"><i class="a" style="height:1em;top:-2em"></i><b style="top:-2em;">x</b></span></p>'),
  );
  const [height, top] = ["height:1em", "top:-2em"].map(className);
  expect(read.problems).toEqual([]);
  expect([...read.declarations]).toEqual(["height:1em", "top:-2em"]);
  const out = read.rewrite("/base/sheet.css");
  expect(out).toContain(
    `<p>π &amp; <span class="katex"><i class="a ${height} ${top}"></i><b class="${top}">x</b></span></p></body></html>`,
  );
  expect(out).toMatch(/<meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'self';[^>]*>/);
  expect(out).toContain('<link rel="stylesheet" href="/base/sheet.css"><title>');
});

test("a page without equations links no sheet of equations", () => {
  expect(readPage(page("<p>a</p>")).rewrite("/sheet.css")).not.toContain("/sheet.css");
});

test("an annotation is left out, with any style in it", () => {
  const out = readPage(
    page('<span class="katex"><math><mi>a</mi><annotation><mi style="top:1em">tex</mi></annotation></math></span>'),
  );
  expect(out.rewrite("/s.css")).toContain("<math><mi>a</mi></math>");
});

test.each([
  ['<p style="color:red">a</p>', 'style="color:red" on <p>'],
  ["<style>p{color:red}</style>", "inline style sheet <style>"],
  ["<noscript><style>p{color:red}</style></noscript>", "inline style sheet <style>"],
  ['<script id="s">run()</script>', 'inline script <script id="s">'],
  ['<script type="module">run()</script>', "inline script <script>"],
  ['<a class="x" onclick="run()">a</a>', 'onclick attribute on <a class="x">'],
  ['<a href=" javascript:run()">a</a>', 'href=" javascript:run()" on <a>'],
  ['<template><p style="top:0">a</p></template>', 'style="top:0" on <p>'],
])("%s is reported", (body, problem) => {
  expect(readPage(page(body)).problems).toEqual([problem]);
});

test.each([
  '<script src="/a.js" type="module"></script>',
  '<script type="application/json">{"a":1}</script>',
  '<svg fill="red"></svg>',
])("%s is allowed", (body) => {
  expect(readPage(page(body)).problems).toEqual([]);
});

test("the style sheet has each declaration once, in the same order whatever the order of the pages", () => {
  expect(styleSheet(new Set(["top:1em", "height:2em"]))).toBe(styleSheet(new Set(["height:2em", "top:1em"])));
  expect(styleSheet(["top:1em"])).toBe(`.${className("top:1em")}{top:1em!important}`);
});
