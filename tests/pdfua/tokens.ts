import type { Dict, Value } from "./objects.js";

/** An operator of a content stream with the values before it. */
export interface Operation {
  operator: string;
  values: Value[];
}

const token =
  /%[^\r\n]*|<<|>>|[[\]]|<[0-9A-Fa-f\s]*>|\/[^\s()<>[\]{}/%]*|\((?:\\[\s\S]|[^\\()])*\)|[^\s()<>[\]{}/%]+/g;

/** Cuts a content stream into operations; texts come as `b:` and their bytes in hexadecimal figures. */
export function operationsOf(content: Buffer): Operation[] {
  const operations: Operation[] = [];
  const stack: Value[][] = [[]];
  for (const [one] of content.toString("latin1").matchAll(token)) {
    const top = stack.at(-1) ?? [];
    if (one.startsWith("%")) continue;
    if (one === "[" || one === "<<") stack.push([]);
    else if (one === "]") close(stack, (values) => values);
    else if (one === ">>") close(stack, paired);
    else if (/^[-+.\d]/.test(one)) top.push(Number(one));
    else if (one.startsWith("/")) top.push(one);
    else if (one.startsWith("<")) top.push(`b:${one.slice(1, -1).replaceAll(/\s/g, "")}`);
    else if (one.startsWith("(")) top.push(`b:${plain(one.slice(1, -1))}`);
    else if (one === "true" || one === "false") top.push(one === "true");
    else operations.push({ operator: one, values: stack.splice(0, stack.length, [])[0] ?? [] });
  }
  return operations;
}

function close(stack: Value[][], make: (values: Value[]) => Value): void {
  const values = stack.pop() ?? [];
  stack.at(-1)?.push(make(values));
}

function paired(values: readonly Value[]): Dict {
  const found: Dict = {};
  for (let i = 0; i + 1 < values.length; i += 2) found[String(values[i])] = values[i + 1];
  return found;
}

function plain(literal: string): string {
  const short: Record<string, string> = { n: "\n", r: "\r", t: "\t", b: "\b", f: "\f" };
  const bytes = literal.replaceAll(/\\([0-7]{1,3}|[\s\S])/g, (_, code: string) =>
    /^[0-7]/.test(code) ? String.fromCharCode(parseInt(code, 8)) : (short[code] ?? code),
  );
  return Buffer.from(bytes, "latin1").toString("hex");
}
