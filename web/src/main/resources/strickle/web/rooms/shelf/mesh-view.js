import {LitElement, css, html} from 'lit';
import {sheet} from '../../parts/sheet.js';
import {say} from '../../app/words.js';
import {extent, facing, triangles} from './mesh.js';

const SIZE = 260;
const MOST = 40_000;
const SHADES = 24;
const STEP = Math.PI / 12;
const KEYS = {ArrowLeft: [-STEP, 0], ArrowRight: [STEP, 0], ArrowUp: [0, -STEP], ArrowDown: [0, STEP]};
const BEGIN = {turn: 0.6, tilt: 0.5};

/** A mesh to look at from every side: dragged, or turned by the arrow keys. */
class MeshView extends LitElement {

  static properties = {stl: {attribute: false}, name: {}};

  static styles = [sheet, css`
    canvas { display: block; width: 260px; max-width: 100%; height: auto; margin-inline: auto; border: var(--border) solid var(--line); background: var(--lime); cursor: grab; touch-action: pan-y; }
    small { display: block; }
    @media print { small { display: none; } }
  `];

  #mesh = null;
  #view = {...BEGIN};
  #frame = 0;
  #dark = matchMedia('(prefers-color-scheme: dark)');

  connectedCallback() {
    super.connectedCallback();
    this.#dark.addEventListener('change', this.#draw);
  }

  disconnectedCallback() {
    this.#dark.removeEventListener('change', this.#draw);
    cancelAnimationFrame(this.#frame);
    super.disconnectedCallback();
  }

  willUpdate(changed) {
    if (changed.has('stl')) {
      const corners = this.stl ? triangles(this.stl) : new Float32Array();
      this.#mesh = corners.length > 0 ? {corners, extent: extent(corners), step: Math.ceil(corners.length / 9 / MOST)} : null;
      this.#view = {...BEGIN};
    }
  }

  render() {
    return this.#mesh ? html`<canvas tabindex="0" role="img" width=${2 * SIZE} height=${2 * SIZE} aria-label=${say('shelf.meshView', {file: this.name})} aria-describedby="how"
        @keydown=${this.#key} @pointerdown=${this.#hold}></canvas><small id="how">${say('shelf.meshHow')}</small>` : '';
  }

  updated() {
    this.#draw();
  }

  #key(event) {
    const [turn, tilt] = KEYS[event.key] ?? [];
    if (turn !== undefined) {
      event.preventDefault();
      this.#turn(turn, tilt);
    }
  }

  #hold(event) {
    const {target} = event;
    const move = ({movementX, movementY}) => this.#turn(movementX / 90, movementY / 90);
    target.setPointerCapture(event.pointerId);
    target.addEventListener('pointermove', move);
    target.addEventListener('lostpointercapture', () => target.removeEventListener('pointermove', move), {once: true});
  }

  #turn(turn, tilt) {
    this.#view = {turn: this.#view.turn + turn, tilt: Math.max(-Math.PI / 2, Math.min(Math.PI / 2, this.#view.tilt + tilt))};
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(this.#draw);
  }

  #draw = () => {
    const pen = this.renderRoot.querySelector('canvas')?.getContext('2d');
    if (!pen) {
      return;
    }
    const {corners, extent: reach, step} = this.#mesh;
    const shades = this.#shades();
    pen.setTransform(SIZE * 0.95, 0, 0, -SIZE * 0.95, SIZE, SIZE);
    pen.clearRect(-2, -2, 4, 4);
    pen.lineWidth = 1 / SIZE;
    for (const {points: [ax, ay, bx, by, cx, cy], light} of facing(corners, reach, this.#view.turn, this.#view.tilt, step)) {
      pen.fillStyle = pen.strokeStyle = shades[Math.round(light * (SHADES - 1))];
      pen.beginPath();
      pen.moveTo(ax, ay);
      pen.lineTo(bx, by);
      pen.lineTo(cx, cy);
      pen.closePath();
      pen.fill();
      pen.stroke();
    }
  };

  // From wet slate to the stone of closed hours, in either theme as a solid lit from the left.
  #shades() {
    const style = getComputedStyle(this);
    const [one, other] = ['--slate-2', '--closed'].map(name => style.getPropertyValue(name).trim().match(/[0-9a-f]{2}/gi).map(pair => parseInt(pair, 16)));
    const [dark, light] = one[0] < other[0] ? [one, other] : [other, one];
    return Array.from({length: SHADES}, (_, at) => `rgb(${dark.map((part, rgb) => Math.round(part + ((light[rgb] - part) * at) / (SHADES - 1))).join(' ')})`);
  }
}

customElements.define('s-mesh-view', MeshView);
