/** The look of the shell: the rail at the side, or at the foot of a narrow screen. */

import {css} from 'lit';

export const shellSheet = css`
  :host { --rail: 10rem; --foot: 0px; display: grid; grid-template-columns: var(--rail) minmax(0, 1fr); min-height: 100vh; }
  .skip { position: fixed; z-index: 40; inset-block-start: -6rem; inset-inline-start: var(--s2); padding: var(--s2) var(--s4); background: var(--lime); color: var(--slate); border: var(--border) solid var(--edge); }
  .skip:focus { inset-block-start: var(--s2); }
  nav { position: sticky; inset-block-start: 0; height: 100dvh; overflow-y: auto; display: flex; flex-direction: column; background: var(--shell); color: var(--on-shell); padding-block: var(--s4); }
  .name { font: 600 var(--t4) var(--head); padding: 0 var(--s4) var(--s4); color: inherit; text-decoration: none; }
  nav :focus-visible { outline-color: var(--on-shell); outline-offset: -3px; }
  nav ul { list-style: none; margin: 0; padding: 0; }
  nav li a { display: flex; align-items: center; min-height: 40px; padding: 0 var(--s4); color: inherit; text-decoration: none; border-inline-start: var(--post) solid transparent; }
  nav li a:hover { text-decoration: underline; }
  nav li a[aria-current] { border-color: #d9774a; background: rgb(255 255 255 / 0.09); font-weight: 600; }
  .foot { margin-block-start: auto; padding-block-start: var(--s4); }
  .state { padding: var(--s2) var(--s4) 0; font-size: var(--t1); min-height: 4.2rem; overflow-wrap: anywhere; }
  .state span { display: block; }
  .banner { display: flex; flex-wrap: wrap; align-items: center; gap: var(--s2) var(--s4); padding: var(--s2) var(--s4); background: var(--ochre-wash); border-block-end: var(--border) solid var(--line); }
  .banner.demo { background: var(--lime-2); }
  .banner p { margin: 0; }
  main { display: flow-root; min-width: 0; }
  main:focus { outline: none; }
  main > s-busy, main > s-empty, main > s-trouble { margin: var(--s4); }

  @media (max-width: 47.99rem) {
    :host { --foot: 3.5rem; grid-template-columns: minmax(0, 1fr); padding-block-end: calc(var(--foot) + env(safe-area-inset-bottom)); }
    nav { position: fixed; z-index: 25; inset: auto 0 0; height: auto; max-height: 85dvh; flex-direction: column-reverse; padding: 0 0 env(safe-area-inset-bottom); }
    .name { display: none; }
    .hand { display: grid; grid-template-columns: 4fr 1fr; min-height: var(--foot); }
    .hand ul { display: grid; grid-template-columns: repeat(4, 1fr); }
    .hand li a, .more { width: 100%; min-height: var(--foot); justify-content: center; padding: 0 var(--s1); border: 0; border-block-start: var(--post) solid transparent; border-radius: 0; }
    .more { background: none; color: inherit; }
    nav .more:hover:not(:disabled) { border-color: transparent; text-decoration: underline; }
    .rest { padding-block: var(--s2); overflow-y: auto; border-block-end: var(--border) solid rgb(255 255 255 / 0.25); }
    .rest li a { min-height: var(--touch); }
    .state { min-height: 0; }
  }

  @media print {
    :host { display: block; padding: 0; min-height: 0; }
    nav, .banner, .skip, s-undo { display: none !important; }
  }
`;
