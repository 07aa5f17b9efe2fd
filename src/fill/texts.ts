const token = /\{\{\{?[^}]*\}?\}\}|<[^>]*>|[^<{]+|[<{]/g;
const spoken =
  /((?:aria-label|about|data-title|data-continued|data-goes-on|data-watermark|sheet|title|label)=")([^"]*)(")/g;

/** A template with its words in another language; what the language has no words for stays as it is. */
export function translated(template: string, texts: Readonly<Record<string, string>>): string {
  return eachText(template, (text) => texts[text] ?? text);
}

/** Every piece of words in a template, in order. */
export function textsOf(template: string): string[] {
  const found: string[] = [];
  eachText(template, (text) => {
    found.push(text);
    return text;
  });
  return found;
}

type Swap = (text: string) => string;

/** Gives every piece of words to `swap`: those that are read, and those that are spoken of boxes and headings. */
function eachText(template: string, swap: Swap): string {
  return template.replaceAll(token, (part) => {
    const attributes = part.startsWith("<") || /^\{\{#?>? ?[a-z-]+ .*="/.test(part);
    if (attributes)
      return part.replaceAll(spoken, (_, before: string, text: string, after: string) => {
        return `${before}${pieces(text, swap)}${after}`;
      });
    return part.startsWith("{") ? part : around(part, swap);
  });
}

/** Words of an attribute stand between the places that are filled in. */
function pieces(text: string, swap: Swap): string {
  return text.replaceAll(/\{\{[^}]*\}\}|\{[a-z]+\}|[^{]+/g, (part) =>
    part.startsWith("{") ? part : around(part, swap),
  );
}

/** The words without the space around them; a piece without a letter is left alone. */
function around(part: string, swap: Swap): string {
  const [, before = "", text = "", after = ""] =
    /^(\s*(?:&nbsp;)*)([^]*?)((?:&nbsp;)*\s*)$/.exec(part) ?? [];
  return /\p{L}/u.test(text) && !/^&[a-z]+;$/.test(text) ? `${before}${swap(text)}${after}` : part;
}
