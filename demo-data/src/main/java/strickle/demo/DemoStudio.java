package strickle.demo;

import static strickle.demo.Entries.amount;
import static strickle.demo.Entries.channel;
import static strickle.demo.Entries.on;
import static strickle.demo.Entries.person;
import static strickle.demo.Entries.room;
import static strickle.demo.Entries.week;

import java.time.ZoneId;
import java.util.List;
import org.joda.money.CurrencyUnit;
import strickle.book.Channel;
import strickle.book.Climate;
import strickle.book.Person;
import strickle.book.Station;
import strickle.book.Studio;

/** The room, the two people and their hours, the shelves, and the ways they sell. */
final class DemoStudio {

  /** Clocks go forward here on 2027-03-14, in the second week of every demo plan. */
  static final ZoneId ZONE = ZoneId.of("America/Halifax");

  private DemoStudio() {}

  static Studio studio() {
    return new Studio(
        "Gannet Row Studio",
        CurrencyUnit.of("CAD"),
        ZONE,
        amount("24.00"),
        amount("420.00"),
        amount("95"),
        8500,
        climate());
  }

  /** A heated shed in early spring; in the second week the cold comes through the walls. */
  private static List<Climate> climate() {
    return List.of(
        room("2027-03-01T00:00", 16.0, 52),
        room("2027-03-07T18:00", 11.0, 48),
        room("2027-03-08T22:00", 8.5, 45),
        room("2027-03-12T08:00", 13.0, 50),
        room("2027-03-15T00:00", 16.5, 55),
        room("2027-03-29T00:00", 18.0, 58),
        room("2027-04-12T00:00", 19.5, 60));
  }

  static List<Person> people() {
    return List.of(
        person(
            "maren",
            "Maren",
            week(
                "MON 18:30-21:30",
                "TUE 18:30-21:30",
                "THU 18:30-21:30",
                "SAT 09:00-12:30 13:15-17:00"),
            on("2027-03-13", "09:00-13:00"),
            on("2027-03-18"),
            on("2027-04-04", "13:00-17:00")),
        person(
            "tobias",
            "Tobias",
            week("TUE 18:00-21:00", "WED 13:00-17:00", "FRI 18:00-20:30", "SAT 10:00-16:00"),
            on("2027-03-20")));
  }

  static List<Station> stations() {
    return List.of(
        new Station("curing-shelf", "curing shelf", 18), new Station("rack", "drying rack", 24));
  }

  static List<Channel> channels() {
    return List.of(
        channel("own-table", "own table", "0", "0", "0"),
        channel("card", "own table, by card", "2.6", "0.15", "0"),
        channel("shop-shelf", "shop shelf", "0", "0", "50"));
  }
}
