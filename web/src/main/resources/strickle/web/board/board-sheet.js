/** How the board looks: solid in the form, dots while it cures, lines while it dries, a moss post when it is ready. */

import {css} from 'lit';

export const boardSheet = css`
  :host { --name: 8.5rem; --head: 44px; position: relative; contain: layout; }
  .view {
    position: relative; overflow: auto; height: var(--board-height, min(70vh, 44rem)); overscroll-behavior: contain;
    border: var(--border) solid var(--line); background: var(--lime); scrollbar-gutter: stable; scroll-padding: 90px 20px 20px 9rem;
  }
  .canvas { position: relative; min-height: 100%; }
  .head { position: sticky; inset-block-start: 0; z-index: 4; background: var(--lime); border-block-end: var(--border) solid var(--edge); }
  .days { position: relative; height: var(--head); font-size: var(--t1); }
  .days > * { position: absolute; white-space: nowrap; padding-inline-start: 4px; color: var(--slate-2); pointer-events: none; }
  .days .day { inset-block: 0; border-inline-start: 1px solid var(--line); color: var(--slate); font-weight: 600; padding-block-start: 2px; overflow: hidden; }
  .days .lower { inset-block-start: 22px; }
  .days .before { transform: translateX(-100%); }
  .days .end { transform: translateX(-100%); padding-inline: 0 4px; }
  .days .now { inset-block-start: 22px; z-index: 1; background: var(--terracotta); color: var(--on-terracotta); padding-inline: 4px; margin-inline-start: -1px; }
  .corner { position: sticky; inset-inline-start: 0; z-index: 2; width: var(--name); height: 100%; background: var(--lime); border-inline-end: 1px solid var(--line); padding: 0 !important; }
  .body { position: relative; }
  .ground, .ties { position: absolute; inset-block: 0; pointer-events: none; }
  .ties { height: 100%; overflow: visible; z-index: 1; }
  .ties path { stroke: var(--slate); stroke-width: 3; fill: none; }
  .line { position: absolute; inset-block: 0; width: 2px; background: repeating-linear-gradient(180deg, var(--terracotta) 0 5px, transparent 5px 9px); z-index: 2; pointer-events: none; }

  .row { position: absolute; inset-inline: 0; border-block-end: 1px solid var(--line); }
  .hands.row, .orders.row { background: no-repeat var(--name) 0 / auto 100%; }
  .head .row { position: relative; border: 0; }
  .name {
    position: sticky; inset-inline-start: 0; z-index: 3; width: var(--name); height: 100%; padding: 0 var(--s2);
    display: flex; align-items: center; background: var(--lime); border-inline-end: 1px solid var(--line);
    font-size: var(--t1); line-height: 1.15; overflow: hidden; overflow-wrap: anywhere;
  }
  .orders:not(.heading) .name { display: block; white-space: pre; text-overflow: ellipsis; line-height: 15px; }
  .drying .name { color: var(--slate-2); }
  .heading { background: var(--lime-2); }
  .heading .name { background: none; border: 0; font: 600 var(--t2) ui-serif, "Iowan Old Style", Georgia, "DejaVu Serif", serif; width: 12rem; }

  .bar {
    position: absolute; inset-block: 3px 4px; margin-inline-start: var(--name); contain: layout paint style; cursor: default;
    font-size: 0.75rem; line-height: 14px; padding: 0 4px; white-space: pre; overflow: hidden; text-overflow: ellipsis;
    border: 1px solid var(--slate); border-radius: var(--corner); background-color: var(--lime); color: var(--slate); touch-action: pan-x pan-y;
    user-select: none; forced-color-adjust: none;
  }
  .bar.form { background-color: var(--fill); color: var(--label); line-height: 19px; text-shadow: 2px 0 var(--fill), -2px 0 var(--fill); } /* over the post */
  .bar.stay, .bar.life { border-inline-end: 4px solid var(--moss); line-height: 13px; font-size: 0.6875rem; }
  .bar.behind-time { border-color: var(--oxide); border-inline-end-color: var(--oxide); }
  .bar.task { background-color: var(--slate); color: var(--lime); border-inline-start: 5px solid var(--ink, var(--slate)); line-height: 19px; }
  .bar.behind { overflow: visible; contain: layout style; }
  .bar.task.behind { color: var(--slate); }
  .bar.behind { text-indent: calc(var(--beside) - 6px); padding-inline-end: 0; }
  .bar.done { background-color: var(--slate-2); text-decoration: line-through; }
  .bar.group { background-color: var(--lime-2); color: var(--slate); line-height: 22px; }
  .bar.pin { border: 2px dashed var(--terracotta); background-color: var(--terracotta-wash); line-height: 19px; }
  .bar.pinned { border-inline-start: 5px double var(--terracotta); }
  .bar.form, .bar.life { cursor: grab; }
  .bar.flag { background: var(--moss-wash); color: var(--slate); border-color: var(--moss); border-inline-start: 3px solid var(--moss); margin-block: 0; inset-block: auto; height: 24px; line-height: 22px; border-radius: 0 var(--corner) var(--corner) 0; }
  .head .bar.group { inset-block: auto; height: 24px; background: var(--lime-2); }
  .bar.flag.behind-time, .head .bar.group.behind-time { background-color: var(--oxide-wash); border-color: var(--oxide); color: var(--oxide); font-weight: 600; }
  .bar.kin { outline: 3px solid var(--terracotta); outline-offset: -1px; z-index: 1; }
  .bar.found { outline: 3px dashed var(--ochre); outline-offset: -1px; z-index: 1; }
  .bar:focus-visible, .name:focus-visible { outline: var(--ring) solid var(--slate); outline-offset: -1px; box-shadow: inset 0 0 0 2px var(--lime); z-index: 2; }
  .bar.dragged { opacity: 0.9; outline: 3px solid var(--terracotta); z-index: 5; cursor: grabbing; pointer-events: none; contain: none; }
  .bar.nowhere { outline-color: var(--oxide); outline-style: dashed; }
  .told { position: absolute; z-index: 6; inset-block-end: var(--s3); inset-inline-start: calc(var(--name) + var(--s3)); background: var(--shell); color: var(--on-shell); padding: var(--s1) var(--s3); border-radius: var(--corner); pointer-events: none; }
  .told:empty { display: none; }
  @media (max-width: 40rem) { :host { --name: 5.5rem; } .view { scroll-padding-inline-start: 6rem; } }
`;

/** On paper: black on white, hatched where it is closed, every row there is. */
export const paperSheet = css`
  .paper { display: none; }
  @media print {
    .view, .told { display: none !important; }
    .paper { display: block; --fill: #404040; --label: #ffffff; --ink: #000000; print-color-adjust: exact; -webkit-print-color-adjust: exact; font-size: 7.5pt; }
    .paper .sheet { break-inside: avoid; margin-block-end: 4mm; }
    .paper .line-of { display: flex; position: static; border-block-end: 0.5px solid #8c8c8c; break-inside: avoid; }
    .paper .name { position: static; width: 28mm; flex: none; font-size: 7.5pt; padding: 0 1mm; height: auto; }
    .paper .track { position: relative; flex: 1; container-type: inline-size; overflow: hidden; }
    .paper .days { height: 14px; }
    .paper .days .day { font-size: 6.5pt; padding: 0 0 0 1px; }
    .paper .bar { margin: 0; inset-block: 2px; font-size: 6.5pt; border-color: #000; border-radius: 0; --fill: #404040 !important; --label: #ffffff !important; --ink: #000000 !important; }
    .paper .bar.form { background-color: #404040; color: #fff; text-shadow: none; }
    .paper .bar.task { background-color: #fff; color: #000; border-inline-start: 3px solid #000; }
    .paper .bar.group { background-color: #fff; color: #000; }
    .paper .bar.behind-time { border-width: 2px; font-weight: 700; }
    .paper .bar.flag { inset-block: auto; height: 15px; line-height: 13px; border-inline-start: 3px solid #000; background: #fff; color: #000; }
    .paper .bar.flag.behind-time { border: 2px solid #000; border-inline: 6px double #000; line-height: 11px; padding: 0 2px; background: #fff; color: #000; font-weight: 700; } /* as in the key: two posts, where there is no colour */
    .paper .closed { position: absolute; inset: 0; }
  }
`;
