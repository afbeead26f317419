import type { Fix } from './findings.words.js';
import type { ReadingsApp } from './readings-app.js';
export function applyFix(_app: ReadingsApp, _fix: Fix, _used: readonly number[]): void {}
