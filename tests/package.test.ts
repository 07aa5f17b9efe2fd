import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, renameSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";

/** Installs the packed package in an empty folder: its own files from the tarball, the rest from here. */
function install(): string {
  const folder = mkdtempSync(join(tmpdir(), "countback-package-"));
  const args = ["pack", "--ignore-scripts", "--silent", "--pack-destination", folder];
  const tarball = execFileSync("npm", args, { encoding: "utf8" }).trim();
  execFileSync("tar", ["-xzf", tarball], { cwd: folder });
  const modules = join(folder, "node_modules");
  mkdirSync(modules);
  renameSync(join(folder, "package"), join(modules, "countback"));
  for (const name of readdirSync("node_modules"))
    if (name !== "countback") symlinkSync(resolve("node_modules", name), join(modules, name));
  return folder;
}

it("works when it is installed elsewhere, with its recipes and templates", () => {
  const folder = install();
  const cli = join(folder, "node_modules", "countback", "dist", "cli.js");
  execFileSync(process.execPath, [cli, "print", "carpet", "--out", folder, "--quiet"], {
    cwd: folder,
  });
  expect(existsSync(join(folder, "carpet-checklist.pdf"))).toBe(true);
});
