package strickle.plan.why;

import java.util.Comparator;

/**
 * Something of which there is so much and no more: units of a form or places at a station.
 *
 * @param kind which of the two
 * @param id the form's or the station's id
 */
record Thing(Kind kind, String id) {

  static final Comparator<Thing> IN_ORDER =
      Comparator.comparing(Thing::kind).thenComparing(Thing::id);

  enum Kind {
    FORM,
    STATION
  }

  static Thing form(String id) {
    return new Thing(Kind.FORM, id);
  }

  static Thing station(String id) {
    return new Thing(Kind.STATION, id);
  }

  boolean isForm() {
    return kind == Kind.FORM;
  }
}
