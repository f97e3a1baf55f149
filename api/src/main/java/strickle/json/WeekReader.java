package strickle.json;

import java.time.DayOfWeek;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import strickle.book.Fault;
import strickle.book.Window;
import tools.jackson.databind.JsonNode;

/** Reads the opening hours of a week: lists of windows by weekday, MON to SUN. */
final class WeekReader implements ValueReader<Map<DayOfWeek, List<Window>>> {

  private static final Map<String, DayOfWeek> DAYS =
      Names.byName(DayOfWeek.values(), Names::weekday);

  private final ValueReader<List<Window>> windows;

  /**
   * A reader of weeks.
   *
   * @param windows reads the hours of one day
   */
  WeekReader(ValueReader<List<Window>> windows) {
    this.windows = windows;
  }

  @Override
  public Map<DayOfWeek, List<Window>> read(JsonNode node) {
    if (!node.isObject()) {
      throw Findings.refusal(Shown.of(node), right());
    }
    Findings findings = new Findings();
    Map<DayOfWeek, List<Window>> week = new EnumMap<>(DayOfWeek.class);
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      if (DAYS.containsKey(entry.getKey())) {
        findings
            .attempt(JsonPath.field(entry.getKey()), () -> windows.read(entry.getValue()))
            .ifPresent(hours -> week.put(DAYS.get(entry.getKey()), hours));
      } else if (!findings.full()) {
        findings.add(unknown(entry.getKey()));
      }
    }
    findings.settle();
    return week;
  }

  @Override
  public String right() {
    return "the hours by weekday, such as {\"MON\": [\"09:00-12:00\", \"13:00-17:00\"]}";
  }

  private static Fault unknown(String name) {
    return new Fault(
        JsonPath.field(name),
        "the unknown weekday " + Shown.text(name),
        Hint.toward(name, DAYS.keySet()));
  }
}
