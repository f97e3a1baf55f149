/** The fitted curve of a drying log as a chart, with its band told in words beside it. */

import uPlot from 'uplot';

/**
 * Draws the weights and, where there is one, the curve through them into an element, and draws it again when its room
 * changes.
 *
 * @param {HTMLElement} place
 * @param {{days: number[], grams: number[], fit: ((day: number) => number)|null, until: number, labels: {day: string, weights: string, curve: string}, colours: {ink: string, line: string, curve: string}}} drawing
 * @returns {uPlot}
 */
export function drawCurve(place, {days, grams, fit, until, labels, colours}) {
  const steps = Array.from({length: 60}, (_, at) => (until * at) / 59);
  const all = [...new Set([...days, ...steps])].sort((one, other) => one - other);
  const weights = new Map(days.map((day, at) => [day, grams[at]]));
  const axis = {stroke: colours.ink, grid: {stroke: colours.line, width: 1}, ticks: {stroke: colours.line}};
  return new uPlot({
    width: Math.max(280, place.clientWidth), height: 260,
    scales: {x: {time: false}},
    legend: {show: false},
    cursor: {show: false},
    axes: [{...axis, label: labels.day}, {...axis, size: 70}],
    series: [
      {label: labels.day},
      {label: labels.curve, stroke: colours.curve, width: 2},
      {label: labels.weights, stroke: colours.ink, paths: () => null, points: {show: true, size: 8, fill: colours.ink}},
    ],
  }, [all, all.map(fit ?? (() => null)), all.map(day => weights.get(day) ?? null)], place);
}
