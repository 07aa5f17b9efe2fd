import { spawnSync } from "node:child_process";

/** Runs the built program as its user would. */
export function countback(args: readonly string[], cwd = process.cwd()) {
  const cli = `${process.cwd()}/dist/cli.js`;
  const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], {
    cwd,
    encoding: "utf8",
    maxBuffer: 1 << 27,
  });
  return { code: status, stdout, stderr };
}
