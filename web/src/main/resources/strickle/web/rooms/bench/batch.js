import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {studio} from '../../app/studio.js';
import {Watching} from '../../app/watching.js';
import {settings} from '../../app/settings.js';
import {address} from '../../app/address.js';
import {say, nameOf} from '../../app/words.js';
import {showAmount, showMass, showVolume, showWeighed} from '../../app/units.js';
import {showPercent} from '../../app/numbers.js';
import {Asking} from '../prices/asking.js';
import {scale} from '../today/ticks.js';
import '../../parts/field.js';
import '../../parts/say.js';
import '../../parts/states.js';

/** What to weigh out for moulds of the book, in one batch. */
class BenchBatch extends LitElement {

  static styles = [sheet, css`
    .ask { display: flex; flex-wrap: wrap; gap: var(--s3) var(--s4); align-items: start; margin-block-end: var(--s4); }
    .ask s-field { max-width: 15rem; }
    .moulds { display: grid; grid-template-columns: repeat(auto-fill, minmax(13rem, 1fr)); gap: var(--s3); border: var(--border) solid var(--line); padding: var(--s3); margin: 0 0 var(--s4); }
    .answer { min-height: 18rem; }
    .grams { font-size: var(--t4); }
  `];

  #asking = new Asking(this, '/api/batch');

  constructor() {
    super();
    new Watching(this, address, settings);
  }

  // The address holds it all: mix, step, round, and castings as "mould.2,other.1".
  get #state() {
    const {mix, castings, step, round} = address.state;
    const chosen = new Map((castings ?? '').split(',').filter(part => part).map(part => {
      const dot = part.lastIndexOf('.');
      return [part.slice(0, dot), Number(part.slice(dot + 1))];
    }));
    return {mix: studio.find('mixes', mix) ?? studio.book.mixes[0], chosen, step: scale.steps.find(one => one === Number(step)) ?? scale.stepGrams, round: Number(round) || null};
  }

  #moulds(mix) {
    const used = new Set(studio.book.pieces.filter(piece => piece.mix === mix.id).map(piece => piece.mould));
    return [...studio.book.moulds].sort((one, other) => used.has(other.id) - used.has(one.id));
  }

  render() {
    const {mixes, moulds} = studio.book;
    if (mixes.length === 0 || moulds.length === 0) {
      return html`<s-empty heading=${say('bench.nothing')}><p>${say('bench.nothingText')}</p><a slot="out" class="button do" href="/shelf">${say('bench.toShelf')}</a></s-empty>`;
    }
    const state = this.#state;
    const fillings = [...state.chosen].filter(([mould, castings]) => castings > 0 && studio.find('moulds', mould)).map(([mould, castings]) => ({mould, castings}));
    if (fillings.length > 0) {
      this.#asking.want({mix: state.mix.id, fillings, scaleStepGrams: state.step, ...(state.round ? {roundUpGrams: state.round} : {})});
    }
    return html`${this.#ask(state)}<div class="answer">${fillings.length === 0 ? html`<p class="quiet">${say('bench.chooseMould')}</p>` : this.#answer()}</div>`;
  }

  #ask({mix, chosen, step, round}) {
    const set = name => event => address.setState({[name]: event.detail ?? undefined});
    return html`<div class="ask screen">
      <s-field needed label=${say('bench.mix')} .value=${mix.id} .options=${studio.book.mixes.map(({id, name}) => ({value: id, label: name}))} @value=${set('mix')}></s-field>
      <s-field needed short label=${say('bench.step')} .value=${step} .options=${scale.options} @value=${event => { scale.stepGrams = event.detail; set('step')(event); }}></s-field>
      <s-field plain short kind="mass" least="0" label=${say('bench.round')} hint=${say('bench.roundHint')} .value=${round} @value=${set('round')}></s-field></div>
      <fieldset class="moulds screen"><legend>${say('bench.moulds')}</legend>${this.#moulds(mix).map(mould => html`
        <s-field plain short kind="whole" least="0" label=${mould.name} .value=${chosen.get(mould.id) ?? 0} @value=${event => this.#cast(mould.id, event.detail ?? 0)}></s-field>`)}</fieldset>`;
  }

  #cast(mould, castings) {
    const {chosen} = this.#state;
    chosen.set(mould, castings);
    address.setState({castings: [...chosen].filter(([, count]) => count > 0).map(([id, count]) => `${id}.${count}`).join(',') || undefined});
  }

  #answer() {
    const {answer, trouble} = this.#asking;
    if (trouble) {
      return html`<s-trouble .problem=${trouble} @again=${() => this.#asking.again()}></s-trouble>`;
    }
    return answer ? html`${this.#sentence(answer)}${this.#lines(answer.batch)}${this.#pigment(answer.batch.pigment)}${this.#more(answer)}` : html`<s-busy></s-busy>`;
  }

  #sentence({batch}) {
    const verdict = batch.pigment.verdict;
    return html`<s-say kind=${verdict === 'too_much' ? 'late' : ''}>${say('bench.weighs', {mass: showMass(batch.wetGrams), volume: showVolume(batch.wetMl), density: showAmount('density', batch.wetDensityKgPerM3)})}
      ${verdict === 'too_much' ? say('bench.tooMuch', {share: showPercent(batch.pigment.total.percentOfCement), most: showPercent(batch.pigment.limit.percentOfCement)}) : ''}</s-say>`;
  }

  #name(material) {
    return material === 'water' ? say('bench.water') : nameOf(studio.book.materials, material);
  }

  #lines({lines}) {
    const share = value => (value === undefined ? '–' : showPercent(value));
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say('bench.weighOut')}><table><caption class="unseen">${say('bench.weighOut')}</caption>
      <thead><tr><th scope="col">${say('bench.material')}</th>${['grams', 'error', 'ofDry', 'ofCement', 'ofWater', 'ofTotal'].map(name => html`<th scope="col" class="number">${say(`bench.${name}`)}</th>`)}</tr></thead>
      <tbody>${lines.map(line => html`<tr><th scope="row">${this.#name(line.material)}</th><td class="number grams">${showWeighed(line.grams)}</td>
        <td class="number">${showPercent(line.errorPercent, 2)}</td><td class="number">${share(line.percentOfDry)}</td><td class="number">${share(line.percentOfCement)}</td>
        <td class="number">${share(line.percentOfWater)}</td><td class="number">${share(line.percentOfTotal)}</td></tr>`)}</tbody></table></div>`;
  }

  #pigment({pigments, verdict, limit, total}) {
    if (verdict === 'none') {
      return '';
    }
    const unknown = (limit.unknown ?? []).map(material => this.#name(material)).join(', ');
    const told = {within: 'bench.within', too_much: 'bench.tooMuch', cannot_be_checked: 'bench.unchecked'}[verdict];
    return html`<section aria-labelledby="pigment"><h2 id="pigment">${say('bench.pigment')}</h2>
      <p class=${verdict === 'within' ? '' : 'care'}>${say(told, {share: showPercent(total.percentOfCement), most: showPercent(limit.percentOfCement), unknown})}</p>
      <ul>${(pigments ?? []).map(one => html`<li>${say('bench.dose', {pigment: this.#name(one.material), dry: showPercent(one.percentOfDry, 2), cement: one.percentOfCement === undefined ? say('bench.unknown') : showPercent(one.percentOfCement, 2)})}</li>`)}</ul></section>`;
  }

  #more({batch, fillings}) {
    return html`<section aria-labelledby="fillings"><h2 id="fillings">${say('bench.fillings')}</h2>
      <ul>${fillings.map(one => html`<li>${say('bench.filling', {count: one.castings, mould: nameOf(studio.book.moulds, one.mould), mass: showMass(one.gramsEach)})}</li>`)}</ul>
      ${batch.leftoverGrams > 0.05 ? html`<p>${say('bench.leftover', {mass: showMass(batch.leftoverGrams)})}</p>` : ''}</section>`;
  }
}

customElements.define('s-bench-batch', BenchBatch);
