/*
 * Asks for the studio while the modules are still on their way: by the time they run, the answers are
 * there. It stands in the document itself, where a studio is open; app/asked.js takes what came.
 */
(function () {
  'use strict';
  var asked = {};
  ['/api/studios', '/api/book', '/api/plan-in-use', '/api/progress?limit=1000', '/api/plans?limit=50'].forEach(function (path) {
    // One that fails is asked again by whoever needs it.
    asked[path] = fetch(path, {cache: 'no-store'}).catch(function () { return null; });
  });
  window.strickleAsked = asked;
})();
