export interface Fix {
  kind: string;
  label: string;
}
export const findingText = (
  _finding: unknown,
  _readings: readonly unknown[],
  _reader: unknown,
): { text: string; remedy: string; fix?: Fix } => ({ text: '', remedy: '' });
