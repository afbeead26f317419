import { html, nothing, type TemplateResult } from 'lit';

export interface Fact {
  label: string;
  text: string;
}

/** Facts as label and value. */
export const renderFacts = (facts: readonly Fact[], look?: string): TemplateResult =>
  html`<dl class=${look ?? nothing}>${facts.map(({ label, text }) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>`;
