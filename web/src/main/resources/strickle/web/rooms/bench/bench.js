import {Room, html} from '../../parts/room.js';
import {css, nothing} from 'lit';
import {studio} from '../../app/studio.js';
import {address} from '../../app/address.js';
import {say} from '../../app/words.js';
import '../../parts/states.js';
import './batch.js';
import './drying.js';
import './air.js';
import './learnt.js';

const TABS = ['batch', 'drying', 'room', 'learnt'];

/** What is worked out with a pencil at the bench: batches, drying logs, the room, what the records say. */
class BenchRoom extends Room {

  static styles = [...Room.styles, css`
    .tabs { display: flex; flex-wrap: wrap; gap: var(--s2); margin-block-end: var(--s4); }
    .tabs a[aria-current] { border-color: var(--slate); border-block-end-width: 3px; font-weight: 600; }
  `];

  get #tab() {
    return TABS.includes(address.rest[0]) ? address.rest[0] : 'batch';
  }

  content() {
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    return html`<nav class="tabs screen" aria-label=${say('rooms.bench')}>${TABS.map(tab => html`<a class="button" href="/bench/${tab}" aria-current=${this.#tab === tab ? 'page' : nothing}>${say(`bench.${tab}`)}</a>`)}</nav>
      ${{
        batch: () => html`<s-bench-batch></s-bench-batch>`,
        drying: () => html`<s-bench-drying .log=${address.rest[1] ?? ''}></s-bench-drying>`,
        room: () => html`<s-bench-air></s-bench-air>`,
        learnt: () => html`<s-bench-learnt></s-bench-learnt>`,
      }[this.#tab]()}`;
  }
}

customElements.define('s-room-bench', BenchRoom);
