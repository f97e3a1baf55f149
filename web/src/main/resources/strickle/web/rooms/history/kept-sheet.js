/** How the history lists what is kept: each with its words, and what can be done with it behind them. */

import {css} from 'lit';

export const keptSheet = css`
  :host { margin-block-start: var(--s5); max-width: 60rem; }
  h2:focus { outline: none; }
  ul { list-style: none; padding: 0; margin-block: var(--s3); }
  li { display: flex; flex-wrap: wrap; align-items: center; gap: var(--s2) var(--s3); padding: var(--s2) 0; border-block-end: var(--border) solid var(--line); }
  li span { flex: 1 1 16rem; }
`;
