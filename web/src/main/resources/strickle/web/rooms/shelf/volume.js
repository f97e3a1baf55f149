import {LitElement, css, html, svg} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {ask, question} from '../../app/service.js';
import {studio} from '../../app/studio.js';
import {say} from '../../app/words.js';
import {showVolume} from '../../app/units.js';
import {SOLIDS, newSolid, profile} from './solids.js';
import {keepMesh, meshOf} from './kept-mesh.js';
import './mesh-view.js';
import '../../parts/field.js';

const WAYS = ['volumeMl', 'shape', 'mesh'];
const WAIT = 350;

/**
 * How much a mould holds: said outright, put together from solids, or taken from a mesh. Event "value"
 * with the three fields, one of which is set.
 */
class ShelfVolume extends LitElement {

  static properties = {mould: {attribute: false}, told: {state: true}, refusal: {state: true}, over: {state: true}, chosen: {state: true}, stl: {state: true}};

  static styles = [sheet, css`
    fieldset { border: var(--border) solid var(--line); padding: var(--s3); margin: 0; min-width: 0; display: grid; gap: var(--s3); }
    legend { font-weight: 600; padding: 0 var(--s2); }
    .solid { display: flex; flex-wrap: wrap; gap: var(--s2) var(--s3); align-items: end; border-block-end: var(--border) solid var(--line); padding-block-end: var(--s3); }
    .solid s-field { max-width: 10rem; }
    .two { display: grid; grid-template-columns: minmax(0, 1fr) 180px; gap: var(--s4); align-items: start; }
    svg { width: 180px; height: 180px; border: var(--border) solid var(--line); background: var(--lime); }
    .added { fill: var(--closed); stroke: var(--slate); }
    .taken { fill: var(--lime); stroke: var(--slate); stroke-dasharray: 4 3; }
    .drop { border: 2px dashed var(--edge); padding: var(--s4); text-align: center; }
    .drop.over { background: var(--lime-2); border-style: solid; }
    output { font-size: var(--t3); }
    @media (max-width: 40rem) { .two { grid-template-columns: minmax(0, 1fr); } }
  `];

  #timer = 0;
  #asked = '';
  #shown = '';

  constructor() {
    super();
    this.told = null;
    this.refusal = '';
    this.over = false;
    this.chosen = '';
    this.stl = null;
  }

  get #way() {
    return this.chosen || (this.mould?.shape ? 'shape' : this.mould?.mesh ? 'mesh' : 'volumeMl');
  }

  get #file() {
    return meshOf(this.mould);
  }

  get #meshUnit() {
    return this.mould?.mesh?.unit ?? 'mm';
  }

  get #shape() {
    const {shape} = this.mould ?? {};
    return Array.isArray(shape) ? shape : shape ? [shape] : [];
  }

  #tell(way, value) {
    const detail = {volumeMl: null, shape: null, mesh: null, [way]: value};
    this.dispatchEvent(new CustomEvent('value', {detail}));
  }

  willUpdate() {
    const file = this.#file;
    if (this.#way === 'mesh' && file && file !== this.#shown) {
      this.#show(file);
    }
    const wanted = this.#wanted;
    const asked = JSON.stringify(wanted);
    if (asked !== this.#asked) {
      this.#asked = asked;
      clearTimeout(this.#timer);
      if (wanted) {
        this.#timer = setTimeout(() => this.#measure(asked), WAIT);
      } else {
        [this.told, this.refusal] = [null, ''];
      }
    }
  }

  // What is to be measured, once all of it is there; a volume that is said outright needs no measuring.
  get #wanted() {
    if (this.#way === 'mesh' && this.#file) {
      return {mesh: this.#file, meshUnit: this.#meshUnit};
    }
    const isWhole = this.#shape.length > 0 && this.#shape.every(solid => Object.values(solid).every(value => value !== null));
    return this.#way === 'shape' && isWhole ? {shape: this.#shape} : null;
  }

  // The file that is kept; one just dropped is there already.
  async #show(file) {
    this.#shown = file;
    try {
      const {body} = await ask('GET', `/api/meshes/${encodeURIComponent(file)}`, {as: 'blob'});
      this.stl = this.#shown === file ? await body.arrayBuffer() : this.stl;
    } catch {
      this.stl = null; // it is drawn when the service is back and the mould is opened again
    }
  }

  async #measure(asked) {
    try {
      const told = await question('/api/volume', JSON.parse(asked));
      if (asked === this.#asked) {
        [this.told, this.refusal] = [told, ''];
      }
    } catch (refused) {
      if (asked === this.#asked) {
        [this.told, this.refusal] = [null, why(refused)];
      }
    }
  }

  render() {
    return html`<fieldset><legend>${say('shelf.f.volume')}</legend>
      <s-field needed label=${say('shelf.volumeBy')} .value=${this.#way} .options=${WAYS.map(value => ({value, label: say(`shelf.volumeWays.${value}`)}))} @value=${event => this.#choose(event.detail)}></s-field>
      ${{volumeMl: () => this.#plain(), shape: () => this.#solids(), mesh: () => this.#mesh()}[this.#way]()}
      ${this.refusal ? html`<p class="late" role="alert">${this.refusal}</p>` : ''}</fieldset>`;
  }

  #choose(way) {
    [this.chosen, this.told, this.refusal] = [way, null, ''];
    if (way === 'shape' && this.#shape.length === 0) {
      this.#tell('shape', [newSolid('cylinder')]);
    }
  }

  #plain() {
    return html`<s-field needed kind="volume" least="0.1" path="volumeMl" label=${say('shelf.f.volumeMl')} .value=${this.mould?.volumeMl ?? null} @value=${event => this.#tell('volumeMl', event.detail)}></s-field>`;
  }

  #solids() {
    const shape = this.#shape;
    const put = changed => this.#tell('shape', changed);
    return html`<div class="two"><div>${shape.map((solid, at) => this.#solid(solid, at, one => put(shape.map((other, index) => (index === at ? one : other))), () => put(shape.filter((_, index) => index !== at))))}
        <div class="row"><button type="button" @click=${() => put([...shape, newSolid('cylinder')])}>${say('shelf.addSolid')}</button>
        <button type="button" @click=${() => put([...shape, newSolid('cylinder', true)])}>${say('shelf.takeSolid')}</button></div></div>
      <div>${this.#sketch(shape)}<output aria-live="polite">${this.told ? say('shelf.holds', {volume: showVolume(this.told.volumeMl)}) : ''}</output></div></div>`;
  }

  #solid(solid, at, put, drop) {
    const measures = Object.keys(SOLIDS[solid.solid] ?? {});
    return html`<div class="solid" role="group" aria-label=${say('shelf.solidOf', {count: at + 1})}>
      <s-field needed label=${say(solid.subtract ? 'shelf.takenAway' : 'shelf.added')} path="shape[${at}]" .value=${solid.solid} .options=${Object.keys(SOLIDS).map(value => ({value, label: say(`shelf.solids.${value}`)}))} @value=${event => put(newSolid(event.detail, solid.subtract))}></s-field>
      ${measures.map(name => html`<s-field needed short kind="length" least="0" path="shape[${at}].${name}" label=${say(`shelf.mm.${name}`)} .value=${solid[name]} @value=${event => put({...solid, [name]: event.detail})}></s-field>`)}
      <button type="button" aria-label=${say('shelf.dropSolid', {count: at + 1})} @click=${drop}>${say('parts.remove')}</button></div>`;
  }

  // From the side, each standing on the same ground: a help to see what was typed, not a drawing to build by.
  #sketch(shape) {
    const sides = shape.map(solid => ({solid, at: profile(solid)}));
    const wide = Math.max(1, ...sides.map(({at: [bottom, top]}) => Math.max(bottom, top)));
    const high = Math.max(1, ...sides.map(({at}) => at[2]));
    const scale = Math.min(80 / wide, 160 / high);
    return html`<svg viewBox="-90 -170 180 180" role="img" aria-label=${say('shelf.sketch')}>${sides.map(({solid, at}) => svg`<path class=${solid.subtract ? 'taken' : 'added'} d=${outline(at, scale)}></path>`)}</svg>`;
  }

  #mesh() {
    const file = this.#file;
    return html`<div class="drop ${this.over ? 'over' : ''}" @dragover=${event => { event.preventDefault(); this.over = true; }} @dragleave=${() => (this.over = false)} @drop=${this.#dropped}>
        <p>${file ? say('shelf.meshIs', {file}) : say('shelf.meshNone')}</p><p>${this.told ? say('shelf.holds', {volume: showVolume(this.told.volumeMl)}) : ''}</p>
        <s-mesh-view .stl=${this.stl} name=${file ?? ''}></s-mesh-view>
        <button type="button" @click=${() => this.renderRoot.querySelector('input').click()}>${say('shelf.chooseMesh')}</button>
        <input hidden type="file" accept=".stl,model/stl" aria-label=${say('shelf.chooseMesh')} @change=${event => this.#take(event.target.files[0])}></div>
      <s-field needed short label=${say('shelf.meshUnit')} .value=${this.#meshUnit} .options=${['mm', 'inch'].map(value => ({value, label: say(`shelf.c.${value}`)}))} @value=${event => this.#unit(file, event.detail)}></s-field>`;
  }

  #unit(file, unit) {
    if (file) {
      this.told = null;
      this.#tell('mesh', {file, unit});
    }
  }

  #dropped(event) {
    event.preventDefault();
    this.over = false;
    this.#take(event.dataTransfer.files[0]);
  }

  // Measured first: what is not closed is refused with its open edges, and nothing is kept of it.
  async #take(file) {
    if (!file) {
      return;
    }
    const unit = this.#meshUnit;
    const bytes = await file.arrayBuffer();
    try {
      const {body: told} = await ask('POST', `/api/volume/mesh?unit=${unit}`, {body: bytes, type: 'model/stl'});
      const name = await keepMesh(file.name.replace(/[^\w.-]+/g, '-'), bytes);
      [this.told, this.refusal] = [told, ''];
      [this.stl, this.#shown] = [bytes, name];
      this.#tell('mesh', {file: name, unit});
      await studio.refresh();
    } catch (refused) {
      this.refusal = say('shelf.meshRefused', {file: file.name, why: why(refused)});
    }
  }
}

const why = refused => (refused.faults?.[0] ? say('parts.found', refused.faults[0]) : refused.message);

function outline([bottom, top, height, bend], scale) {
  const [b, t, h] = [bottom * scale, top * scale, height * scale];
  return {
    'dome': `M${-b} 0 A${b} ${h} 0 0 1 ${b} 0 Z`,
    'egg': `M${-b} ${-h / 2} A${b} ${h / 2} 0 0 1 ${b} ${-h / 2} A${b} ${h / 2} 0 0 1 ${-b} ${-h / 2} Z`,
    'ring': `M${-b} ${-h / 2} A${h / 2} ${h / 2} 0 0 1 ${-b + h} ${-h / 2} A${h / 2} ${h / 2} 0 0 1 ${-b} ${-h / 2} M${b - h} ${-h / 2} A${h / 2} ${h / 2} 0 0 1 ${b} ${-h / 2} A${h / 2} ${h / 2} 0 0 1 ${b - h} ${-h / 2} Z`,
  }[bend] ?? `M${-b} 0 L${-t} ${-h} L${t} ${-h} L${b} 0 Z`;
}

customElements.define('s-shelf-volume', ShelfVolume);
