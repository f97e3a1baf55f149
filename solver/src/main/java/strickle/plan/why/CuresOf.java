package strickle.plan.why;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Says reliefs as changes of the studio. */
final class CuresOf {

  private final Moments moments;
  private final ZoneId zone;

  CuresOf(Floor floor) {
    this.moments = floor.moments();
    this.zone = floor.book().studio().timeZone();
  }

  /** The remedy that a way to free an order comes to; none when a pin would have to go for it. */
  Stream<Remedy> remedy(String order, Freeing.Freed way) {
    List<Cure> cures = new ArrayList<>();
    for (Relief relief : way.reliefs()) {
      if (relief instanceof Relief.Unpinned) {
        return Stream.empty();
      }
      cures.addAll(cures(relief));
    }
    return Stream.of(
        new Remedy(order, cures, moments.instant(way.ready()).atZone(zone).toOffsetDateTime()));
  }

  private List<Cure> cures(Relief relief) {
    return switch (relief) {
      case Relief.More more ->
          more.units().entrySet().stream().map(one -> more(one.getKey(), one.getValue())).toList();
      case Relief.Hours hours ->
          List.of(
              new Cure.Hours(
                  hours.person(), moments.local(hours.from()), moments.local(hours.to())));
      case Relief.Helper helper ->
          List.of(new Cure.Hands(moments.local(helper.from()), moments.local(helper.to())));
      case Relief.Warmth warmth -> List.of(new Cure.Warmth(Relief.Warmth.DEGREES_C));
      case Relief.Unpinned unpinned -> List.of();
    };
  }

  private static Cure more(Thing thing, int units) {
    return thing.isForm() ? new Cure.Forms(thing.id(), units) : new Cure.Places(thing.id(), units);
  }
}
