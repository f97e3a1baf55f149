/*
 * Asks for the studio while the modules are still on their way: by the time they run, the answers are
 * there. It stands in the document itself, where a studio is open; app/asked.js takes what came. For the
 * plan in use only where the document says that there is one: else it would be refused.
 */
(function () {
  'use strict';
  var asked = {};
  var paths = ['/api/studios', '/api/book', '/api/progress?limit=1000', '/api/plans?limit=50'];
  if (document.currentScript.dataset.plan === 'in-use') {
    paths.push('/api/plan-in-use');
  }
  paths.forEach(function (path) {
    // One that fails is asked again by whoever needs it.
    asked[path] = fetch(path, {cache: 'no-store'}).catch(function () { return null; });
  });
  window.strickleAsked = asked;
})();
