import type { Track } from "./style.js";

/** Turns tracks into widths: fixed ones first, the rest by share. */
export function widthsOf(tracks: readonly Track[], width: number, gap: number): number[] {
  const fixed = tracks.reduce((sum, track) => sum + ("points" in track ? track.points : 0), 0);
  const shares = tracks.reduce((sum, track) => sum + ("share" in track ? track.share : 0), 0);
  const rest = Math.max(0, width - fixed - gap * Math.max(0, tracks.length - 1));
  return tracks.map((track) => ("points" in track ? track.points : (rest * track.share) / shares));
}
