import { figuresOf } from "../figures.js";
import type { Rule } from "../rule.js";

/**
 * Torque of seat, belt, steering, brake and structural fixings is the maker's: a computed one is only a check
 * (thin sheet or a weld nut is the limit there), so it never prints.
 */
export const computedCritical: Rule = {
  whole: false,
  run: (library, report) => {
    const critical = library.ranges.flatMap(({ data, source }) =>
      Object.entries(data.parts)
        .filter(([, part]) => part.critical !== undefined)
        .map(([name]) => ({ file: source.file, name })),
    );
    for (const { figure, source, path } of figuresOf(library)) {
      const computed = typeof figure.source === "object" && "figure" in figure.source;
      const onCritical = critical.some(
        ({ file, name }) => file === source.file && path[1] === name,
      );
      const step = stepOf(source.value, path);
      if (
        figure.kind !== "torque" ||
        !computed ||
        !(onCritical || step?.["critical"] !== undefined)
      )
        continue;
      report({
        code: "computed-critical",
        message: "A computed torque cannot stand on critical work.",
        span: source.spanOf([...path, "source"]),
        hints: [
          "Write 'source: maker' without a value; use `countback figure torque-check` to check it.",
        ],
        related: [],
      });
    }
  },
};

/** The step in which a figure stands. */
function stepOf(
  value: unknown,
  path: readonly (string | number)[],
): Record<string, unknown> | undefined {
  const [section = "", index = ""] = path;
  const list = (value as Record<string, unknown>)[section];
  return Array.isArray(list) ? (list[Number(index)] as Record<string, unknown>) : undefined;
}
