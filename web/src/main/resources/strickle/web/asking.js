/*
 * Asks for the studio while the modules are still on their way: by the time they run, the answers are
 * there. It stands in the document itself, where a studio is open; app/asked.js takes what came.
 */
(function () {
  'use strict';
  var asked = {};
  // One that fails is asked again by whoever needs it.
  function ask(path) {
    return fetch(path, {cache: 'no-store'}).catch(function () { return null; });
  }
  ['/api/studios', '/api/book', '/api/progress?limit=1000', '/api/plans?limit=50'].forEach(function (path) {
    asked[path] = ask(path);
  });
  // Not every studio works by a plan, and to ask for one that is not there would be refused.
  asked['/api/plan-in-use'] = asked['/api/plans?limit=50'].then(function (plans) {
    return plans && plans.ok ? plans.clone().json() : {};
  }).then(function (told) {
    return told.anyInUse ? ask('/api/plan-in-use') : null;
  }).catch(function () { return null; });
  window.strickleAsked = asked;
})();
