package strickle.json;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Set;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import strickle.book.Faulty;

/** Reads names that a standard fixes: currencies (ISO 4217) and time zones (IANA). */
final class Standards {

  private static final String CURRENCY = "the ISO 4217 code of a currency such as \"USD\"";
  private static final String TIME_ZONE = "the name of a time zone such as \"America/Chicago\"";

  private Standards() {}

  static ValueReader<CurrencyUnit> currencies() {
    return new TextReader<>(CURRENCY, Standards::currency);
  }

  static ValueReader<ZoneId> timeZones() {
    return new TextReader<>(TIME_ZONE, Standards::timeZone);
  }

  private static CurrencyUnit currency(String code) {
    try {
      return CurrencyUnit.of(code);
    } catch (IllegalCurrencyException unknown) {
      Set<String> codes =
          CurrencyUnit.registeredCurrencies().stream()
              .map(CurrencyUnit::getCode)
              .collect(Collectors.toSet());
      throw refusal(code, codes, CURRENCY);
    }
  }

  private static ZoneId timeZone(String name) {
    try {
      return ZoneId.of(name);
    } catch (DateTimeException unknown) {
      throw refusal(name, ZoneId.getAvailableZoneIds(), TIME_ZONE);
    }
  }

  private static Faulty refusal(String found, Set<String> known, String right) {
    return Findings.refusal(Shown.text(found), Hint.toward(found, known, right));
  }
}
