/**
 * Runs of logic that stand twice: the same tokens in the same order, whatever the spaces and comments between them. Imports do not
 * count, nor does what a build writes.
 */
const TOKEN = /[\p{L}\p{N}_$#]+|=>|\?\.|\?\?|&&|\|\||[=!]==?|\S/gu;
const IMPORT = /^(?:import|export)\b[^;]*?\bfrom\s*'[^']*';/gm;

/**
 * @param {{ path: string, text: string }[]} files  without comments
 * @param {number} least  tokens that make a run
 * @returns {{ path: string, line: number, other: string }[]} where a run stands again, and where it stood first
 */
export function repeats(files, least) {
  const first = new Map();
  const found = [];
  for (const { path, text } of files) {
    const code = text.replace(IMPORT, (statement) => statement.replace(/[^\n]/g, ' '));
    const tokens = [...code.matchAll(TOKEN)];
    const lineOf = (i) => code.slice(0, tokens[i].index).split('\n').length;
    let told = -1;
    for (let i = 0; i + least <= tokens.length; i++) {
      const run = tokens
        .slice(i, i + least)
        .map(([token]) => token)
        .join(' ');
      const before = first.get(run);
      if (!before) {
        first.set(run, { path, i, line: lineOf(i) });
        continue;
      }
      // A run that overlaps itself is a list of like things.
      if (before.path === path && i - before.i < least) {
        before.i = i;
        continue;
      }
      if (i <= told) continue;
      found.push({ path, line: lineOf(i), other: `${before.path}:${before.line}` });
      told = i + least - 1;
    }
  }
  return found;
}
