/** The look of a box with its label; for components that make boxes of their own too. */

import {css} from 'lit';

export const fieldSheet = css`
  :host { min-width: 0; }
  label { display: block; font-weight: 600; margin-block-end: var(--s1); }
  label small { font-weight: 400; }
  .box { display: flex; align-items: stretch; max-width: 28rem; }
  :host([short]) .box { max-width: 11rem; }
  :host([short]) .box:has(select) { max-width: 18rem; }
  input, select, textarea {
    flex: 1; min-width: 0; min-height: 38px; margin: 0; padding: var(--s1) var(--s2);
    font: inherit; font-variant-numeric: var(--figures); color: inherit;
    background: var(--lime); border: var(--border) solid var(--edge); border-radius: var(--corner);
  }
  input[type="checkbox"] { flex: none; width: 24px; height: 24px; min-height: 0; accent-color: var(--terracotta); }
  [aria-invalid="true"] { border-color: var(--oxide); border-width: 2px; }
  .unit { display: flex; align-items: center; padding: 0 var(--s2); color: var(--slate-2); white-space: nowrap; }
  .hint { display: block; margin-block-start: var(--s1); max-width: 48ch; }
  .fault { margin: var(--s1) 0 0; color: var(--oxide); font-weight: 600; }
  .fault::before { content: "! "; }
  .tick { display: flex; align-items: center; gap: var(--s2); min-height: 38px; font-weight: 400; margin: 0; }
  :host([bare]) label:not(.tick) { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  @media (pointer: coarse) { input, select, textarea { min-height: var(--touch); } .tick { min-height: var(--touch); } }
`;
