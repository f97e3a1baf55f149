/*
 * Asks for the studio while the modules are still on their way: by the time they run, the answers are
 * there. A plain script, so that it need not wait for them; app/asked.js takes what came.
 */
(function () {
  'use strict';
  var STUDIOS = '/api/studios';
  var OF_A_STUDIO = ['/api/book', '/api/plan-in-use', '/api/progress?limit=1000', '/api/plans?limit=50'];
  var asked = {};

  function ask(path) {
    return fetch(path, {cache: 'no-store'});
  }

  // What fails here is asked again by whoever needs it.
  function nothing() {
    return null;
  }

  function anyOpen(answer) {
    return answer.ok && answer.clone().json().then(function (body) { return body.items.length > 0; });
  }

  asked[STUDIOS] = ask(STUDIOS).catch(nothing);
  var open = asked[STUDIOS].then(anyOpen).catch(nothing);
  OF_A_STUDIO.forEach(function (path) {
    asked[path] = open.then(function (yes) { return yes ? ask(path) : null; }).catch(nothing);
  });
  window.strickleAsked = asked;
})();
