import {LitElement, css, html} from 'lit';
import {sheet} from '../parts/sheet.js';
import {say} from '../app/words.js';
import './names.js';

const LOOKS = ['form', 'set', 'attended', 'cure', 'dry', 'rest', 'ready', 'tie', 'due', 'late', 'closed'];

/** How to read the board: a mark and a word for each look. */
export class BoardKey extends LitElement {

  static styles = [sheet, css`
    ul { display: flex; flex-wrap: wrap; gap: var(--s1) var(--s4); list-style: none; padding: 0; margin-block-start: var(--s2); font-size: var(--t1); color: var(--slate-2); }
    li { display: flex; align-items: center; gap: 6px; min-height: 20px; }
    i { width: 30px; height: 14px; border: 1px solid var(--slate); border-radius: 2px; background: no-repeat var(--lime); forced-color-adjust: none; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
    .form { background: #6b5f58; }
    .set { background: linear-gradient(var(--label-light), var(--label-light)) 18px 0 / 2px 100% no-repeat #6b5f58; }
    .attended { background: var(--slate); }
    .cure { background: repeating-linear-gradient(90deg, var(--slate) 0 3px, transparent 3px 7px) 2px 5px / 100% 3px no-repeat; }
    .dry { background: linear-gradient(var(--slate), var(--slate)) 0 4px / 100% 2px no-repeat, linear-gradient(var(--slate), var(--slate)) 0 8px / 100% 2px no-repeat; }
    .rest { background: linear-gradient(var(--slate), var(--slate)) 0 6px / 100% 1px no-repeat; }
    .ready { border-inline-end: 4px solid var(--moss); }
    .tie { border: 0; background: linear-gradient(var(--slate), var(--slate)) 13px 0 / 3px 100% no-repeat; }
    .due { border-color: var(--moss); border-inline-start: 3px solid var(--moss); background: var(--moss-wash); }
    .late { border-color: var(--oxide); border-inline-start: 3px solid var(--oxide); background: var(--oxide-wash); }
    .closed { border-color: var(--line); background: var(--closed); }
    @media print { .closed { background: repeating-linear-gradient(135deg, #9a9a9a 0 0.6px, transparent 0.6px 4px); } .form, .set { background-color: #404040; }
      .due { border-color: #000; border-inline-start-color: #000; background: none; }
      .late { border: 2px solid #000; border-inline: 6px double #000; background: none; } }
  `];

  render() {
    return html`<ul aria-label=${say('board.key.title')}>${LOOKS.map(look => html`<li><i class=${look} aria-hidden="true"></i>${say(`board.key.${look}`)}</li>`)}</ul>`;
  }
}

customElements.define('s-board-key', BoardKey);
