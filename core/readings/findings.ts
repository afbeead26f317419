export interface Finding {
  kind: string;
}
export const findingsIn = (_readings: readonly unknown[], _fit: unknown): Finding[] => [];
