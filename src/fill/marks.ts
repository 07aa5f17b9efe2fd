import Handlebars from "handlebars";

type Marked = readonly { text: string; mark: string }[];

/** Escapes a text for HTML. */
export function escape(text: string): string {
  return Handlebars.escapeExpression(text);
}

/** Stands for the spoken name of a value to write in, until the language is known. */
const value = "{value}";

/** Text as HTML: each figure followed by its source mark, each run of underscores a line to write on. */
export function marked(text: string, figures: Marked): string {
  const html = figures.reduce((done, figure) => {
    const shown = escape(figure.text);
    return done.replace(shown, () => `${shown}<sup>${figure.mark}</sup>`);
  }, escape(text));
  let lines = 0;
  return html.replaceAll(/_{3,}/g, () => {
    const name = ++lines === 1 ? value : `${value} ${lines}`;
    return `<span class="blank figure" aria-label="${name}"></span>`;
  });
}

/** The HTML with the values to write in named in the language's words. */
export function withValuesNamed(html: string, name: string): string {
  return html.replaceAll(`aria-label="${value}`, () => `aria-label="${escape(name)}`);
}
