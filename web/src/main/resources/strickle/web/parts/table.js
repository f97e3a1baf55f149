import {LitElement, css, html, nothing} from 'lit';
import {sheet} from './sheet.js';
import {say} from '../app/words.js';

/**
 * A table that can be sorted by its columns.
 *
 * `<s-table label="Orders" .rows=${orders} .columns=${[
 *   {name: 'for', label: 'For', show: order => html`<a href=…>${order.for}</a>`, by: order => order.for},
 *   {name: 'due', label: 'Due', show: order => showMoment(order.due), by: order => order.due, number: true}]}
 *   sort="due" @sort=${event => address.setState({sort: event.detail})}></s-table>`
 *
 * `show` gives a text or template, `by` a value to sort by (without it the column is not sortable),
 * `number` sets it to the right, `whole` keeps it on one line where there is room. A sort of "-due" is from the last to the first. The first column is
 * the row's name. On a narrow screen each row becomes a block with the labels before the values.
 */
export class Table extends LitElement {

  static properties = {label: {}, rows: {attribute: false}, columns: {attribute: false}, sort: {}, styleRow: {attribute: false}};

  static styles = [sheet, css`
    table { font-variant-numeric: var(--figures); }
    thead th { position: sticky; inset-block-start: 0; background: var(--lime); z-index: 1; }
    thead button { min-height: 28px; padding: 0; background: none; border: 0; font: inherit; color: inherit; text-align: start; }
    thead button:hover { color: var(--slate); text-decoration: underline; }
    tbody th { font-weight: 400; color: inherit; font-size: inherit; }
    @media (min-width: 75rem) { .whole { white-space: nowrap; } }
    .number + :not(.number) { padding-inline-start: var(--s4); }
    tr.late th, tr.late td { background: var(--oxide-wash); }
    th:first-child, td:first-child { padding-inline-start: var(--s2); }
    /* A heading that sorts is a button, and buttons are not printed: this one is the column's name. */
    @media print {
      thead th { position: static; }
      thead button { display: inline !important; }
      tbody th { white-space: nowrap; }
    }
    @media (max-width: 40rem) {
      thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      table, tbody, tr, td, tbody th { display: block; width: auto; }
      tr { border-block-end: var(--border) solid var(--edge); padding: var(--s2); }
      th, td, .number + :not(.number) { border: 0; padding: 2px 0; }
      th:first-child, td:first-child { padding-inline-start: 0; }
      td::before { content: attr(data-label) ": "; color: var(--slate-2); font-size: var(--t1); }
      tbody tr { display: grid; grid-template-columns: 1fr 1fr; column-gap: var(--s3); }
      tbody th, td:not(.number) { grid-column: 1 / -1; }
      td.number { text-align: start; white-space: normal; }
      tbody th { font-weight: 600; }
    }
  `];

  constructor() {
    super();
    this.rows = [];
    this.columns = [];
    this.sort = '';
  }

  get #sorted() {
    const column = this.columns.find(({name}) => name === this.sort.replace('-', ''));
    if (!column?.by) {
      return this.rows;
    }
    const way = this.sort.startsWith('-') ? -1 : 1;
    const keyed = this.rows.map(row => ({row, key: column.by(row)}));
    return keyed.sort((one, other) => way * compared(one.key, other.key)).map(({row}) => row);
  }

  render() {
    return html`<table><caption class="unseen">${this.label}</caption>
      <thead><tr>${this.columns.map(column => this.#head(column))}</tr></thead>
      <tbody>${this.#sorted.map(row => html`<tr class=${this.styleRow?.(row) || nothing}>${this.columns.map((column, at) => this.#cell(row, column, at))}</tr>`)}</tbody>
    </table>`;
  }

  #head({name, label, by, number}) {
    const down = this.sort === `-${name}`;
    const sorted = this.sort === name || down;
    return html`<th scope="col" class=${number ? 'number' : nothing} aria-sort=${sorted ? (down ? 'descending' : 'ascending') : nothing}>
      ${by ? html`<button aria-label=${say('parts.sortBy', {column: label})} @click=${() => this.#by(sorted && !down ? `-${name}` : name)}>${label}${sorted ? (down ? ' ↓' : ' ↑') : ''}</button>` : label}</th>`;
  }

  #cell(row, {label, show, number, whole}, at) {
    return at === 0
      ? html`<th scope="row">${show(row)}</th>`
      : html`<td class=${number ? 'number' : whole ? 'whole' : nothing} data-label=${label}>${show(row)}</td>`;
  }

  #by(sort) {
    this.sort = sort;
    this.dispatchEvent(new CustomEvent('sort', {detail: sort}));
  }
}

// Made once: a comparison by itself makes one each time, and a sort is hundreds of them.
const collator = new Intl.Collator(undefined, {numeric: true});

function compared(one, other) {
  if (typeof one === 'string' && typeof other === 'string') {
    return collator.compare(one, other);
  }
  return (one ?? -Infinity) < (other ?? -Infinity) ? -1 : (one ?? -Infinity) > (other ?? -Infinity) ? 1 : 0;
}

customElements.define('s-table', Table);
