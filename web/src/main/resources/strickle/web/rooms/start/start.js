import {css, html} from 'lit';
import {Room} from '../../parts/room.js';
import {studio} from '../../app/studio.js';
import {address} from '../../app/address.js';
import {beginEmpty} from '../../app/beginning.js';
import {say} from '../../app/words.js';
import {tell} from '../../parts/undo.js';
import './first-choice.js';
import './password.js';
import './questions.js';

/** The first steps: the made-up studio or one's own, its password, and three questions. */
class StartRoom extends Room {

  static properties = {busy: {state: true}, problem: {state: true}};

  static styles = [...Room.styles, css`
    :host { max-width: 62rem; }
    .way { margin-block-start: var(--s4); }
  `];

  constructor() {
    super();
    this.busy = false;
    this.problem = null;
  }

  get title() {
    const word = {none: 'welcome', closed: 'closed'}[studio.phase];
    return say(`start.${word ?? (studio.isDemo ? 'leave' : studio.isEmpty ? 'heading' : 'ready')}`);
  }

  content() {
    if (studio.phase === 'none') {
      return html`<p>${say('start.intro')}</p><s-first-choice></s-first-choice>`;
    }
    if (studio.phase === 'closed') {
      return html`<p>${say('start.closedText')}</p><s-password></s-password>`;
    }
    if (!studio.book) {
      return html`<s-busy></s-busy>`;
    }
    if (studio.isDemo) {
      return this.#leaving();
    }
    return studio.isEmpty ? html`<p>${say('start.questionsText')}</p><s-questions></s-questions>` : this.#ready();
  }

  #leaving() {
    return html`<p>${say('start.leaveText')}</p>
      ${this.problem ? html`<s-trouble .problem=${this.problem} @again=${this.#leave}></s-trouble>` : ''}
      <div class="row way"><button class="do" ?disabled=${this.busy} @click=${this.#leave}>${say('start.leaveDo')}</button>
        <a class="button" href="/today">${say('start.stay')}</a></div>`;
  }

  async #leave() {
    this.busy = true;
    this.problem = null;
    try {
      await beginEmpty(say('shell.myStudio'));
      tell(say('shell.left'), true);
      address.go('/start');
    } catch (problem) {
      this.problem = problem;
    } finally {
      this.busy = false;
    }
  }

  #ready() {
    return html`<p>${say('start.readyText')}</p><div class="row way">
      <a class="button do" href="/orders">${say('start.toOrders')}</a><a class="button" href="/shelf">${say('start.toShelf')}</a></div>`;
  }
}

customElements.define('s-room-start', StartRoom);
