/**
 * The styles that every component shares, as one sheet made once. A component says
 * `static styles = [sheet, css\`…\`]`.
 */

import {css} from 'lit';

export const sheet = css`
  * { box-sizing: border-box; }
  :host { display: block; }
  :host([hidden]), [hidden] { display: none !important; }
  h1, h2, h3 { font-family: var(--head); font-weight: 600; line-height: 1.15; margin: 0; text-wrap: balance; }
  h1 { font-size: var(--t5); }
  h2 { font-size: var(--t4); }
  h3 { font-size: var(--t3); }
  h1:focus { outline: none; }
  p { margin: 0 0 var(--s2); max-width: 68ch; }
  a { color: var(--terracotta); text-underline-offset: 0.15em; }
  small { font-size: var(--t1); color: var(--slate-2); }
  ul, ol { margin: 0; padding-inline-start: 1.2em; }
  dl { margin: 0; }
  table { border-collapse: collapse; width: 100%; }
  th { text-align: start; font-weight: 600; color: var(--slate-2); font-size: var(--t1); }
  th, td { padding: var(--s2) var(--s3) var(--s2) 0; border-block-end: var(--border) solid var(--line); vertical-align: baseline; }
  .number { text-align: end; font-variant-numeric: var(--figures); white-space: nowrap; }
  :focus-visible { outline: var(--ring) solid var(--slate); outline-offset: 2px; }

  button, .button {
    display: inline-flex; align-items: center; justify-content: center; gap: var(--s2);
    min-height: 38px; padding: 0 var(--s3); margin: 0;
    font: inherit; color: inherit; text-decoration: none; cursor: pointer;
    background: var(--lime-2); border: var(--border) solid var(--edge); border-radius: var(--corner);
  }
  button:hover:not(:disabled), .button:hover { border-color: var(--slate); }
  button.do, .button.do { background: var(--terracotta); border-color: var(--terracotta); color: var(--on-terracotta); font-weight: 600; }
  button.plain { background: none; border-color: transparent; color: var(--terracotta); text-decoration: underline; text-underline-offset: 0.15em; padding-inline: var(--s1); }
  button.big { min-height: var(--touch); }
  button[aria-pressed="true"] { border-color: var(--slate); box-shadow: inset 0 -3px 0 var(--terracotta); }
  button:disabled, button.do:disabled { color: var(--slate-2); background: var(--lime-2); border: var(--border) dashed var(--edge); cursor: default; }

  .row { display: flex; flex-wrap: wrap; align-items: center; gap: var(--s2) var(--s3); }
  .spread { display: flex; flex-wrap: wrap; align-items: baseline; justify-content: space-between; gap: var(--s2) var(--s4); }
  .stack > * + * { margin-block-start: var(--s3); }
  .card { border: var(--border) solid var(--line); background: var(--lime-2); padding: var(--s3) var(--s4); border-radius: var(--corner); }
  .quiet { color: var(--slate-2); }
  .late { color: var(--oxide); font-weight: 600; }
  .ready { color: var(--moss); font-weight: 600; }
  .care { color: var(--ochre); font-weight: 600; }
  .unseen {
    position: absolute; width: 1px; height: 1px; margin: -1px; padding: 0; overflow: hidden;
    clip-path: inset(50%); white-space: nowrap; border: 0;
  }
  .scroll { overflow-x: auto; max-width: 100%; }

  @media (forced-colors: active) {
    button.do, .button.do { border-width: 2px; }
  }
  @media print {
    button, .button, .screen { display: none !important; }
    .card { background: none; break-inside: avoid; }
    a { color: inherit; text-decoration: none; }
  }
`;

/** The head of a room: its title and what can be done. */
export const roomSheet = css`
  :host { padding: var(--s4); max-width: 90rem; }
  header { display: flex; flex-wrap: wrap; align-items: center; gap: var(--s2) var(--s3); margin-block-end: var(--s3); min-height: 38px; }
  header h1 { margin-inline-end: auto; }
  section { margin-block-start: var(--s5); }
  section > h2 { margin-block-end: var(--s3); }
  @media (max-width: 30rem) { :host { padding: var(--s3); } }
  @media print { :host { padding: 0; max-width: none; } }
`;
