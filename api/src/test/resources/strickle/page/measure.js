/*
 * Runs before anything of the page, for api/bench page: notes what the browser itself measures. Times
 * are in milliseconds; paints are from the beginning of the navigation (Largest Contentful Paint and
 * Event Timing, W3C; Layout Instability, WICG).
 */
(() => {
  // The made-up plans begin on a day of their own: the page is shown that day, and time goes on.
  const Clock = Date;
  const ahead = Clock.parse('BEGINS') - Clock.now();
  window.Date = class extends Clock {
    constructor(...given) {
      super(...(given.length === 0 ? [Clock.now() + ahead] : given));
    }

    static now() {
      return Clock.now() + ahead;
    }
  };

  const measured = {largest: 0, shift: 0, shifts: [], slow: new Map(), frames: []};
  window.measured = measured;

  const watch = (type, take, more = {}) => new PerformanceObserver(list => list.getEntries().forEach(take))
    .observe({type, buffered: true, ...more});
  watch('largest-contentful-paint', ({startTime}) => (measured.largest = Math.max(measured.largest, startTime)));
  watch('layout-shift', ({value, hadRecentInput, sources}) => {
    if (hadRecentInput) return;
    measured.shift += value;
    measured.shifts.push(`${value.toFixed(4)} of ${sources.map(({node}) => node?.localName ?? node?.parentNode?.localName ?? '?').join(', ')}`);
  });
  // One press is several events, which are one interaction; it took as long as the longest of them.
  watch('event', ({interactionId: id, name, duration}) => {
    if (id && duration > (measured.slow.get(id)?.duration ?? 0)) measured.slow.set(id, {name, duration});
  }, {durationThreshold: 16});

  const frame = () => new Promise(done => requestAnimationFrame(done));
  /** Waits until what is to be drawn has been, and what was noted of it has been told. */
  measured.drawn = async () => {
    await frame();
    await frame();
    await new Promise(done => setTimeout(done, 30));
  };

  measured.take = () => {
    const slow = [...measured.slow.values()].sort((one, other) => other.duration - one.duration);
    const taken = {
      largest: measured.largest, shift: measured.shift, shifts: measured.shifts.join('; '),
      interactions: performance.interactionCount, slowest: slow[0]?.duration ?? 0, slowestOf: slow[0]?.name ?? '',
    };
    Object.assign(measured, {shift: 0, shifts: []});
    measured.slow.clear();
    return taken;
  };

  let watching = false;
  /** Notes every frame from now on. */
  measured.watchFrames = async () => {
    measured.frames = [];
    watching = true;
    const note = at => {
      measured.frames.push(at);
      if (watching) requestAnimationFrame(note);
    };
    requestAnimationFrame(note);
    await frame();
  };

  /** How long each frame took since then. */
  measured.framesTaken = () => {
    watching = false;
    return measured.frames.slice(1).map((at, number) => at - measured.frames[number]);
  };

  const every = root => [...root.querySelectorAll('*')].flatMap(one => (one.shadowRoot ? [one, ...every(one.shadowRoot)] : [one]));
  /** Every element of the page, through all shadows. */
  measured.nodes = () => every(document.body).length;

  const board = () => every(document.body).find(({localName}) => localName === 's-week-board');
  measured.board = board;
  /** From a press that leads to the Week until its bars are painted. */
  measured.boardPainted = press => new Promise(done => {
    const begun = performance.now();
    press();
    const look = () => {
      if (board()?.shadowRoot.querySelector('.row .bar')) {
        const {port1, port2} = new MessageChannel(); // a task after the frame: it has been painted
        requestAnimationFrame(() => port2.postMessage(''));
        port1.onmessage = () => done(performance.now() - begun);
      } else {
        requestAnimationFrame(look);
      }
    };
    requestAnimationFrame(look);
  });

  /** Counts the rows on paper when it is printed next; asked for when the board is there, whose own turn then comes first. */
  measured.watchPrint = () => addEventListener('beforeprint', () => {
    const paper = board().shadowRoot.querySelector('.paper');
    measured.printed = {rows: paper.querySelectorAll('.row-of').length, bars: paper.querySelectorAll('.bar').length, there: board().board.rows.length};
  }, {once: true});
})();
