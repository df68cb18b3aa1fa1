import { defineCollection } from "astro:content";
import { glob } from "astro/loaders";
import { z } from "astro/zod";

/** A sentence of prose: begins like one and, for a summary, ends like one. */
const line = z.string().trim().min(3);

/**
 * The technique pages. The path of a file is the address of its page; `index.mdx` stands for its folder.
 * Everything else the handbook knows is data and comes from src/catalogue.
 */
const techniques = defineCollection({
  loader: glob({ base: "src/content/techniques", pattern: "**/*.mdx" }),
  schema: z.strictObject({
    title: line.max(60),
    /** What the page is for, in one sentence; shown under its title and in search results. */
    summary: line.max(160).regex(/[.?]$/, "must be a sentence with its full stop"),
    /** Place among the pages of its technique, 1 first. */
    order: z.int().min(1),
    technique: z.enum(["marking", "cutting", "punching", "bending", "rolling", "joining", "furnace"]),
    /** Ids of sources the page rests on without citing them in its text. */
    sources: z.array(z.string()).default([]),
  }),
});

/** The same pages in Spanish; a page has the path of its English one below this folder, and all else is taken from that. */
const techniquesInSpanish = defineCollection({
  loader: glob({ base: "src/content/techniques-es", pattern: "**/*.mdx" }),
  schema: z.strictObject({
    title: line.max(60),
    summary: line.max(200).regex(/[.?]$/, "must be a sentence with its full stop"),
    sources: z.array(z.string()).default([]),
  }),
});

export const collections = { techniques, techniquesInSpanish };
