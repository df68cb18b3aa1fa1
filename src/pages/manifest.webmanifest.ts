import { site } from "../texts/en/site.ts";

/**
 * Lets the handbook be installed. Every address in it is relative to the file itself, so that it holds under any path
 * (W3C, Web Application Manifest). Its icons are drawn by scripts/icons.ts.
 */
const manifest = {
  name: site.name,
  short_name: site.shortName,
  description: site.about,
  lang: "en",
  dir: "ltr",
  id: "./",
  start_url: "./",
  scope: "./",
  display: "standalone",
  theme_color: "#1e2f70",
  background_color: "#f4f2ec",
  icons: [
    { src: "icons/192.png", sizes: "192x192", type: "image/png" },
    { src: "icons/512.png", sizes: "512x512", type: "image/png" },
    { src: "icons/maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    { src: "favicon.svg", sizes: "any", type: "image/svg+xml" },
  ],
};

export const GET = () => new Response(JSON.stringify(manifest), { headers: { "Content-Type": "application/manifest+json" } });
