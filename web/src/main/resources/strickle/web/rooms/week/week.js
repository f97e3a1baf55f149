import {css, nothing} from 'lit';
import {Room, html} from '../../parts/room.js';
import {address} from '../../app/address.js';
import {laying} from '../../app/laying.js';
import {get} from '../../app/service.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';
import {showDays, showMoment} from '../../app/times.js';
import {Behind} from '../../parts/behind.js';
import {tell} from '../../parts/undo.js';
import {localMinute, localText} from '../../board/clock.js';
import {at, personName} from '../../board/names.js';
import {pinsKept, pinsOfLot} from '../../board/pinning.js';
import {weekOf} from '../../board/week.js';
import {Outcome, layOut} from './outcome.js';
import {changePins} from './pins.js';
import {changed, sentence, waiting} from './sentence.js';
import {ZOOMS} from './tools.js';
import '../../board/week-board.js';
import '../../board/week-card.js';
import '../../board/board-key.js';
import '../../board/day-list.js';
import '../../parts/states.js';
import './laying-panel.js';
import './move-dialog.js';
import './tools.js';

const MINUTE_MS = 60_000;
const NOW_STEP = 5;
const NARROW = matchMedia('(max-width: 40rem)');
const nowMinute = () => Math.floor(Date.now() / MINUTE_MS / NOW_STEP) * NOW_STEP;

/** The week: the plan in use as a board or a list, pinning, and laying out again. */
export class Week extends Room {

  static properties = {moving: {state: true}, problem: {state: true}, because: {state: true}, looking: {state: true}, seen: {state: true}};

  static styles = [Room.styles, css`
    s-week-board { --board-height: max(26rem, calc(100dvh - 20rem)); }
    @media (max-width: 40rem) { s-week-board { --board-height: 70dvh; } header h1 { flex: 1 0 100%; } }
    @media print { :host { font-size: 8pt; } }
  `];

  #outcome = new Outcome();
  #behind = new Behind(this);
  #look = () => this.#outcome.look();
  #why = null;

  constructor() {
    super();
    Object.assign(this, {moving: null, problem: null, because: {}, looking: false, seen: {days: [], isCut: false}, now: nowMinute()});
    this.#outcome.addEventListener('change', () => {
      address.setState({plan: this.#outcome.id});
      this.requestUpdate();
    });
  }

  connectedCallback() {
    super.connectedCallback();
    NARROW.addEventListener('change', this.#redraw);
    laying.addEventListener('change', this.#look);
    this.#begin();
    this.clock = setInterval(() => {
      this.now = nowMinute();
      this.requestUpdate();
    }, NOW_STEP * MINUTE_MS);
  }

  disconnectedCallback() {
    NARROW.removeEventListener('change', this.#redraw);
    laying.removeEventListener('change', this.#look);
    clearInterval(this.clock);
    super.disconnectedCallback();
  }

  /** A plan that the address names, or that is being laid out anyhow, is taken up. */
  async #begin() {
    const {plan} = address.state;
    if (!plan || plan === laying.plan?.id) laying.resume();
    else if (!(await laying.follow(plan).catch(() => false))) address.setState({plan: ''});
    this.#outcome.look();
  }

  #redraw = () => this.requestUpdate();

  /** What the address says, with what holds where it says nothing. */
  get state() {
    const {by = 'form', days, show = NARROW.matches ? 'list' : 'board', time = '', find = '', chosen = '', at: text} = address.state;
    const zoom = ZOOMS.find(each => String(each) === days) ?? (NARROW.matches ? 3 : 7);
    return {by, show, find, chosen, days: zoom, trueTime: time === 'true', at: this.#minute(text)};
  }

  #minute(text) {
    const {zone, from, to} = this.week;
    const asked = /^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(text ?? '') ? localMinute(text, zone) : NaN;
    if (asked >= from && asked < to) return asked;
    return this.now > from && this.now < to ? this.week.days.find(day => day.to > this.now).from : this.week.from;
  }

  /** The plan that is shown, and the week it makes. */
  get plan() {
    return this.looking && this.#outcome.plan ? this.#outcome.plan : studio.plan;
  }

  get week() {
    return this.#weekOf(this.plan);
  }

  #weekOf(plan) {
    return plan && studio.book ? weekOf(studio.book, plan, this.now) : null;
  }

  get title() {
    if (!this.week) return super.title;
    const days = this.#days;
    return showDays(days[0].from * MINUTE_MS, (days.at(-1).to - 720) * MINUTE_MS);
  }

  // What is to be seen: on the board, where closed hours are narrow, not always as many days as were chosen.
  get #days() {
    const {at: from, days, show} = this.state;
    if (show === 'board' && this.seen.days.length > 0) return this.seen.days;
    const first = Math.max(0, this.week.days.findLastIndex(day => day.from <= from));
    return this.week.days.slice(first, first + days);
  }

  #see({detail}) {
    const isSame = [0, -1].every(at => detail.days.at(at).from === this.seen.days.at(at)?.from);
    if (!isSame || detail.isCut !== this.seen.isCut) this.seen = detail;
  }

  actions() {
    if (!this.week) return '';
    const {week} = this;
    return html`<button @click=${() => this.#step(-1)}>${say('week.tools.earlier')}</button>
      <button @click=${this.#toNow}>${say(this.now > week.from && this.now < week.to ? 'week.tools.now' : 'week.tools.begin')}</button>
      <button @click=${() => this.#step(1)}>${say('week.tools.later')}</button>
      <button @click=${() => print()}>${say('week.tools.print')}</button>
      <button class="do" ?disabled=${laying.isUnderWay} @click=${this.#layOut}>${say('week.tools.again')}</button>`;
  }

  content() {
    const {week} = this;
    return html`${week ? html`${sentence(week, this.looking ? {} : this.because)}${this.looking ? nothing : changed(week)}${waiting()}` : nothing}
      ${this.problem ? html`<s-trouble heading=${this.refused} .problem=${this.problem} @again=${() => (this.problem = null)}></s-trouble>` : nothing}
      ${this.#panel()}
      ${week ? this.#shown(week) : studio.phase === 'open' ? this.#nothing() : html`<s-busy></s-busy>`}`;
  }

  #panel() {
    if (laying.plan === null && laying.problem === null) return nothing;
    return html`<s-laying .outcome=${this.#outcome} .problem=${this.#outcome.problem} .told=${laying.plan} .present=${this.#weekOf(studio.plan)} .next=${this.#weekOf(this.#outcome.plan)} .looking=${this.looking}
      @stop=${() => laying.stop()} @again=${this.#layOut} @accept=${this.#accept} @drop=${this.#drop} @look=${() => (this.looking = !this.looking)}></s-laying>`;
  }

  #nothing() {
    if (laying.plan !== null) return nothing;
    const ready = studio.book.pieces.length > 0 && studio.book.orders.length > 0;
    const last = studio.plans.find(({state}) => state === 'done');
    return html`<s-empty heading=${say('week.none.title')}><p>${say('week.none.text')}</p>
      ${last ? html`<button slot="out" @click=${() => laying.follow(last.id)}>${say('week.none.last', {at: showMoment(last.createdAt)})}</button>` : nothing}${ready ? nothing : html`<p>${say('week.none.empty')}</p>`}
      ${ready ? html`<button slot="out" class="do" @click=${this.#layOut}>${say('week.none.begin')}</button>`
        : html`<a slot="out" class="button" href="/shelf">${say('week.none.shelf')}</a><a slot="out" class="button" href="/orders">${say('week.none.orders')}</a>`}</s-empty>`;
  }

  #shown(week) {
    const state = this.state;
    return html`<s-week-tools .by=${state.by} .days=${state.days} .show=${state.show} .trueTime=${state.trueTime} .find=${state.find} .finds=${this.finds ?? 0}
        @state=${event => address.setState(event.detail)} @next=${this.#nextFind}></s-week-tools>
      ${this.#behind.drawn([state.show, state.by, state.trueTime].join(), () => (state.show === 'list' ? html`<s-day-list .week=${week} .from=${state.at} .days=${state.days} @open=${this.#open}></s-day-list>` : this.#board(state)))}
      <s-week-card .week=${week} .because=${this.because} @pin=${this.#pin} @unpin=${this.#unpin} @move=${this.#move}
        @held=${() => this.#boardNode?.peeking.hold()} @left=${() => this.#card.unpeek()} @chosen=${event => address.setState({chosen: event.detail.id})} @closed=${() => address.setState({chosen: ''})}></s-week-card>
      <s-move-pour .week=${week} .lot=${this.moving} @pin=${this.#pin} @close=${() => (this.moving = null)}></s-move-pour>`;
  }

  #board(state) {
    return html`<s-week-board .book=${studio.book} .plan=${this.plan} .by=${state.by} .days=${state.days} .trueTime=${state.trueTime} .now=${this.now} .at=${state.at} .find=${state.find} .chosen=${state.chosen}
        @open=${this.#open} @peek=${event => this.#card.peek(event.detail.bar, event.detail.node)} @unpeek=${() => this.#card.unpeek()} @pin=${this.#pin} @unpin=${this.#unpin}
        @seen=${this.#see} @view=${event => address.setState({at: localText(event.detail.at, this.week.zone)})} @zoom=${this.#zoom} @search=${() => this.renderRoot.querySelector('s-week-tools').search()}></s-week-board>
      <s-board-key></s-board-key>`;
  }

  get #boardNode() {
    return this.renderRoot.querySelector('s-week-board');
  }

  get #card() {
    return this.renderRoot.querySelector('s-week-card');
  }

  updated(changedNow) {
    super.updated(changedNow);
    const finds = this.#boardNode?.finds.length ?? 0;
    if (finds !== this.finds) {
      this.finds = finds;
      this.requestUpdate();
    }
    this.#askWhy();
  }

  /** The reasons of late orders with the book as it is now; those of the plan hold until they are there. */
  async #askWhy() {
    const {plan} = studio;
    if (!plan || this.#why === plan || plan.totals.lateOrders === 0) return;
    this.#why = plan;
    try {
      const {body} = await get('/api/why');
      this.because = Object.fromEntries(body.items.map(({order, because}) => [order, because]));
    } catch {
      this.because = {}; // the plan has its own reasons
    }
  }

  #open(event) {
    this.#card.open(event.detail.bar, event.detail.node);
  }

  /** Turns so many views on: whole ones up to a week, half ones beyond. */
  #step(views) {
    const {week} = this;
    const days = this.#days;
    const {show, days: zoom} = this.state;
    const whole = days.length - (views > 0 && show === 'board' && this.seen.isCut ? 1 : 0);
    const place = week.days.findIndex(day => day.from === days[0].from) + views * Math.max(1, zoom <= 7 ? whole : Math.round(days.length / 2));
    const day = week.days[Math.max(0, Math.min(week.days.length - 1, place))];
    address.setState({at: localText(day.from, week.zone)});
  }

  #toNow = () => address.setState({at: ''});

  #zoom(event) {
    const place = ZOOMS.indexOf(this.state.days) + event.detail.step;
    address.setState({days: ZOOMS[Math.max(0, Math.min(ZOOMS.length - 1, place))]});
  }

  #nextFind() {
    const {finds} = this.#boardNode;
    if (finds.length === 0) return;
    this.found = ((this.found ?? -1) + 1) % finds.length;
    const {bar} = finds[this.found];
    this.#boardNode.show(each => each === bar);
  }

  #layOut = async () => {
    this.looking = false;
    try {
      await layOut({waiting: address.state.wait === 'materials'});
    } catch {
      // what was refused stands in the panel
    }
  };

  async #accept() {
    try {
      await laying.accept();
      this.looking = false;
      address.setState({wait: ''});
      tell(say('week.laying.accepted'), true);
    } catch (failed) {
      [this.problem, this.refused] = [failed, say('week.laying.notTaken')];
    }
  }

  #drop() {
    this.looking = false;
    laying.leave();
    tell(say('week.laying.dropped'));
  }

  #move(event) {
    this.#card.close();
    this.moving = event.detail.lot;
  }

  async #pin({detail: {lot, start, person}}) {
    const {week} = this;
    await this.#change(() => changePins(pinsKept(week, lot), pinsOfLot(week, lot, start, person)),
      `${say('week.pins.pinned', {mix: lot.mix.name, at: at(start), person: personName(week, person)})} ${say('week.pins.again')}`);
  }

  async #unpin({detail}) {
    const pins = detail.pin ? [detail.pin.pin] : pinsKept(this.week, detail.lot);
    await this.#change(() => changePins(pins, []), say('week.pins.unpinned'));
  }

  async #change(work, told) {
    this.problem = null;
    try {
      await work();
      this.#card.close();
      tell(told, true);
    } catch (failed) {
      [this.problem, this.refused] = [failed, say('week.pins.refused')];
    }
  }
}

customElements.define('s-room-week', Week);
