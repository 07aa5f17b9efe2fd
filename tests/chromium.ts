import { type Browser, type Frame, type Page, chromium } from "playwright-core";
import { type Field, run } from "./pdf.js";

/** A PDF open in Chromium's own viewer. */
export interface Viewed {
  page: Page;
  viewer: Frame;
}

/** Starts Chromium without a window, its PDF viewer switched on and its calls home off. */
export function startChromium(): Promise<Browser> {
  const viewer = ["--disable-extensions", "--disable-component-extensions-with-background-pages"];
  const quiet = ["background-networking", "component-update", "sync", "quic", "gpu"];
  return chromium.launch({
    executablePath: run("which", ["chromium"]).trim(),
    ignoreDefaultArgs: viewer,
    args: ["--no-sandbox", "--no-first-run", ...quiet.map((name) => `--disable-${name}`)],
  });
}

/** Opens a PDF at its own size and waits until its pages are drawn. */
export async function view(browser: Browser, file: string): Promise<Viewed> {
  const page = await browser.newPage({ viewport: { width: 1400, height: 1400 } });
  await page.goto(`file://${file}#zoom=100`);
  const own = (): Frame | undefined =>
    page.frames().find((frame) => frame.url().startsWith("chrome-extension:"));
  await until(
    async () =>
      (await own()?.locator("cr-progress#progress").getAttribute("aria-valuenow")) === "100",
  );
  await page.waitForTimeout(500);
  const viewer = own();
  if (!viewer) throw new Error("Chromium shows no viewer");
  return { page, viewer };
}

const [pixels, points] = [96, 72];
const a4 = { width: 595.28, height: 841.89 };

/** Clicks into a field of the first page, an a4 sheet in the middle of the viewer. */
export async function clickField({ page, viewer }: Viewed, { rect }: Field): Promise<void> {
  const place = await viewer.locator("#plugin").boundingBox();
  if (!place) throw new Error("Chromium shows no page");
  const scale = pixels / points;
  const left = place.x + (place.width - a4.width * scale) / 2;
  const [x, y] = [(rect[0] + rect[2]) / 2, (rect[1] + rect[3]) / 2];
  await page.mouse.click(left + x * scale, place.y + (a4.height - y) * scale);
}

/**
 * Chooses "With your changes" from the viewer's own download button, and gives what it writes. Only the window
 * that asks for a file name, which a browser without a window cannot show, is ours.
 */
export async function saveChanges({ viewer }: Viewed): Promise<Buffer> {
  await viewer.evaluate(answerFileDialog);
  await viewer.locator("#downloads #save").click();
  await viewer.locator("#save-edited").click();
  const read = () => viewer.evaluate(() => (globalThis as unknown as Written).written);
  await until(async () => (await read()) !== undefined);
  return Buffer.from((await read()) ?? "", "base64");
}

/** What the page of the viewer keeps for us. */
interface Written {
  written?: string;
}

/** Runs in the viewer: takes the file that it writes, instead of asking where to. */
function answerFileDialog(): void {
  const keep = async (file: Blob): Promise<void> => {
    const bytes = new Uint8Array(await file.arrayBuffer());
    const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
    (globalThis as unknown as Written).written = btoa(text);
  };
  const writer = { write: keep, truncate: () => undefined };
  const entry = { createWriter: (use: (one: typeof writer) => void) => use(writer) };
  const browser = globalThis as unknown as { chrome: { fileSystem: object } };
  Object.assign(browser.chrome.fileSystem, {
    chooseEntry: (_: unknown, use: (one: typeof entry) => void) => use(entry),
  });
}

async function until(done: () => Promise<boolean | undefined>): Promise<void> {
  for (let i = 0; i < 150; i++) {
    if (await done().catch(() => false)) return;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error("Chromium did not come to it within 15 s");
}
