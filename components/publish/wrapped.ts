/** A text in lines that fit. Words break at spaces alone, unless one of them is too long for a line of its own, as an address is. */
export function wrapped(text: string, fits: (line: string) => boolean): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n]+/).filter(Boolean)) {
    const longer = line ? `${line} ${word}` : word;
    if (fits(longer)) {
      line = longer;
      continue;
    }
    if (line) lines.push(line);
    line = '';
    for (const sign of word) {
      if (line && !fits(line + sign)) {
        lines.push(line);
        line = '';
      }
      line += sign;
    }
  }
  return line ? [...lines, line] : lines;
}
