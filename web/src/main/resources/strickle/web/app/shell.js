import {LitElement, html, nothing} from 'lit';
import {html as open, unsafeStatic} from 'lit/static-html.js';
import {sheet} from '../parts/sheet.js';
import {shellSheet} from './shell-sheet.js';
import {AT_HAND, ROOMS, isRoom, loadRoom} from '../rooms/rooms.js';
import {studio} from './studio.js';
import {Watching} from './watching.js';
import {address} from './address.js';
import {beginEmpty} from './beginning.js';
import {connection} from './connection.js';
import {settings} from './settings.js';
import {say} from './words.js';
import '../parts/states.js';
import {tell} from '../parts/undo.js';
import './refusal.js';

const BESIDE = ['settings', 'start'];
const NARROW = window.matchMedia('(max-width: 47.99rem)');

/** The shell: the rail with the rooms, what everybody should know, and the room one is in. */
class Shell extends LitElement {

  static properties = {shown: {state: true}, element: {state: true}, failed: {state: true}, unfolded: {state: true}, away: {state: true}};

  static styles = [sheet, shellSheet];

  #entered = false;

  constructor() {
    super();
    this.shown = '';
    this.element = null;
    this.failed = null;
    this.unfolded = false;
    this.away = false;
    new Watching(this, address, settings);
    NARROW.addEventListener('change', () => this.requestUpdate());
    connection.addEventListener('lost', () => (this.away = true));
    connection.addEventListener('back', () => (this.away = false));
    address.addEventListener('change', () => {
      this.#entered = true;
      this.unfolded = false;
    });
  }

  get #room() {
    if (studio.phase === 'none' || studio.phase === 'closed') {
      return 'start';
    }
    const {room} = address;
    return room === '' ? (studio.isEmpty ? 'start' : 'today') : room;
  }

  willUpdate() {
    const room = this.#room;
    if (studio.phase !== 'loading' && room !== this.shown) {
      this.shown = room;
      this.#load(room);
    }
    document.documentElement.lang = 'en';
  }

  // A room that is entered first while the service is away comes when it is back.
  async #load(room, again = true) {
    this.failed = null;
    this.element = null;
    if (!isRoom(room)) {
      return;
    }
    try {
      const element = await loadRoom(room);
      if (this.shown === room) {
        this.element = element;
        await this.updateComplete;
        await this.#enter(element);
      }
    } catch (failed) {
      if (again) {
        await connection.back();
        await (this.shown === room ? this.#load(room, false) : null);
        return;
      }
      console.error(failed);
      this.failed = failed;
    }
  }

  async #enter(element) {
    const room = this.renderRoot.querySelector(element);
    await room?.updateComplete;
    if (this.#entered) {
      room?.enter?.();
    }
  }

  render() {
    return html`
      ${this.#rail()}
      <div class="page">${this.#isBeginning ? html`<main><s-busy></s-busy></main>` : html`
        <header>${this.#banners()}</header>
        <main id="room" tabindex="-1">${this.#content()}</main>`}
      </div>
      <s-undo></s-undo>`;
  }

  // Until it is known what stands above the room, there is no room: it would jump.
  get #isBeginning() {
    return studio.phase === 'loading' && !studio.trouble;
  }

  #skip() {
    this.renderRoot.querySelector('main').focus();
  }

  #rail() {
    return html`<nav aria-label=${say('shell.rooms')} class=${this.unfolded ? 'open' : nothing} @keydown=${this.#fold}>
      <button class="skip" @click=${this.#skip}>${say('shell.skip')}</button>
      <a class="name" href="/">${say('shell.name')}</a>
      ${studio.phase === 'open' ? (NARROW.matches ? this.#atFoot() : this.#atSide()) : ''}
    </nav>`;
  }

  #atSide() {
    return html`<ul>${ROOMS.map(room => this.#link(room))}</ul><div class="foot"><ul>${this.#link('settings')}</ul>${this.#state()}</div>`;
  }

  #atFoot() {
    return html`<div class="hand"><ul>${AT_HAND.map(room => this.#link(room))}</ul>
        <button class="more" aria-expanded=${this.unfolded} aria-controls="rest" @click=${() => (this.unfolded = !this.unfolded)}>${say('shell.more')}</button></div>
      <div class="rest" id="rest" ?hidden=${!this.unfolded}><ul>${[...ROOMS.filter(room => !AT_HAND.includes(room)), 'settings'].map(room => this.#link(room))}</ul>${this.#state()}</div>`;
  }

  #state() {
    return html`<div class="state"><span>${studio.book?.studio.name ?? studio.studio?.name}</span>
      <span role="status">${studio.unsent > 0 ? say('shell.unsent', {count: studio.unsent}) : say('shell.saved')}</span></div>`;
  }

  #link(room) {
    const here = this.shown === room;
    return html`<li><a href="/${room}" aria-current=${here ? 'page' : nothing} @pointerenter=${() => loadRoom(room).catch(() => {})}>${say(`rooms.${room}`)}</a></li>`;
  }

  #fold(event) {
    if (event.key === 'Escape' && this.unfolded) {
      this.unfolded = false;
      this.renderRoot.querySelector('.more').focus();
    }
  }

  #banners() {
    return html`<div role="status">
      ${this.away ? html`<div class="banner"><p>${say('shell.away')} ${say('shell.awayKept')}</p></div>` : ''}
      </div>
      ${studio.refusals.length > 0 ? html`<s-refusal .refusal=${studio.refusals[0]}></s-refusal>` : ''}
      ${studio.isDemo && !BESIDE.includes(this.shown) ? html`<div class="banner demo"><p>${say('shell.demo')}</p><button @click=${this.#leaveDemo}>${say('shell.leaveDemo')}</button></div>` : ''}`;
  }

  async #leaveDemo() {
    try {
      await beginEmpty(say('shell.myStudio'));
      tell(say('shell.left'), () => studio.undo().then(() => address.go('/today')));
      address.go('/start');
    } catch (problem) {
      tell(problem.message);
    }
  }

  #content() {
    if (studio.trouble) {
      return html`<s-trouble .problem=${studio.trouble} @again=${() => location.reload()}></s-trouble>`;
    }
    if (this.failed) {
      return html`<s-trouble heading=${say('shell.older')} .problem=${this.failed} @again=${() => location.reload()}></s-trouble>`;
    }
    if (!isRoom(this.shown)) {
      return html`<s-empty heading=${say('shell.nowhere')}><a slot="out" href="/today">${say('shell.toToday')}</a></s-empty>`;
    }
    return this.element ? open`<${unsafeStatic(this.element)}></${unsafeStatic(this.element)}>` : html`<s-busy></s-busy>`;
  }
}

customElements.define('s-app', Shell);
