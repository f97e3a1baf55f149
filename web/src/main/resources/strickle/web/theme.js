/*
 * The theme, before anything is painted: the dark rules of tokens.css hold under a condition, and the
 * reader's choice takes that condition's place. A plain script, so that nothing flashes first.
 */
(function () {
  'use strict';
  var KEY = 'strickle.theme';
  var CONDITIONS = {system: '(prefers-color-scheme: dark)', light: 'not all', dark: 'screen'};
  var found = null;

  function darkRule() {
    if (found) {
      return found;
    }
    for (var i = 0; i < document.styleSheets.length; i++) {
      var rules = document.styleSheets[i].cssRules;
      for (var j = 0; j < rules.length; j++) {
        if (rules[j].media && /prefers-color-scheme:\s*dark/.test(rules[j].media.mediaText)) {
          found = rules[j];
          return found;
        }
      }
    }
    return null;
  }

  function chosen() {
    try {
      var kept = localStorage.getItem(KEY);
      return CONDITIONS[kept] ? kept : 'system';
    } catch (closed) {
      return 'system';
    }
  }

  function wear(name) {
    var rule = darkRule();
    if (rule) {
      rule.media.mediaText = CONDITIONS[name] || CONDITIONS.system;
    }
  }

  wear(chosen());
  window.strickleTheme = {chosen: chosen, wear: wear};
})();
