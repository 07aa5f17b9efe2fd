import { escape } from "./marks.js";

/** A whole page for a browser around one filled sheet, with the same style sheet. */
export function page(sheet: string, css: string, title: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<title>${escape(title)}</title>
<style>
${css}
body { margin: 10mm; max-width: 180mm; }
* { box-sizing: border-box; }
</style>
</head>
<body>
${sheet}</body>
</html>
`;
}
