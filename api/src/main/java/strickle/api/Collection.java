package strickle.api;

import java.util.List;
import java.util.stream.Stream;
import strickle.book.Channel;
import strickle.book.Fair;
import strickle.book.Form;
import strickle.book.Material;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Order;
import strickle.book.Person;
import strickle.book.Piece;
import strickle.book.Pin;
import strickle.book.Station;
import strickle.plan.replan.Happening;

/**
 * A list of the studio book, or of what is noted beside it, as the service offers it.
 *
 * @param name the list's field in the book and its place under /api
 * @param one a single thing of it, in a word
 * @param type the record of such a thing
 * @param topic the heading it stands under in the contract
 * @param example a thing that is right, as JSON
 */
record Collection(
    String name, String one, Class<? extends Record> type, String topic, String example) {

  private static final String BOOK = "The book";

  private Collection(String name, String one, Class<? extends Record> type, String example) {
    this(name, one, type, BOOK, example);
  }

  /** Whether its things have no id of their own, and are numbered as they come. */
  boolean numbered() {
    return Stream.of(type.getRecordComponents()).noneMatch(part -> part.getName().equals("id"));
  }

  /** Every list of a book. */
  static final List<Collection> ALL =
      List.of(
          new Collection(
              "people",
              "person",
              Person.class,
              "{\"id\": \"ana\", \"name\": \"Ana\", \"hours\": {\"SAT\": [\"10:00-13:00\"]}}"),
          new Collection(
              "stations",
              "station",
              Station.class,
              "{\"id\": \"rack\", \"name\": \"drying rack\", \"places\": 24}"),
          new Collection(
              "forms",
              "form",
              Form.class,
              "{\"id\": \"tub-a\", \"name\": \"outer tub\", \"count\": 1, \"costEach\": 14.5,"
                  + " \"lifeCastings\": 150}"),
          new Collection(
              "moulds",
              "mould",
              Mould.class,
              "{\"id\": \"tray\", \"name\": \"round tray\","
                  + " \"forms\": [{\"form\": \"tub-a\", \"count\": 1}], \"cavities\": 1,"
                  + " \"volumeMl\": 420, \"pourMinutes\": 3, \"demouldMinutes\": 5,"
                  + " \"setHours\": 20}"),
          new Collection(
              "materials",
              "material",
              Material.class,
              "{\"id\": \"sealer\", \"name\": \"sealer\", \"kind\": \"sealer\", \"unit\": \"g\","
                  + " \"pack\": {\"quantity\": 1000, \"price\": 24.0}}"),
          new Collection(
              "mixes",
              "mix",
              Mix.class,
              "{\"id\": \"slate\", \"name\": \"slate\","
                  + " \"dry\": [{\"material\": \"white-blend\", \"parts\": 100}],"
                  + " \"water\": {\"percent\": 25, \"of\": \"dry\"}, \"airPercent\": 2,"
                  + " \"mixMinutes\": 12, \"workingMinutes\": 25, \"washMinutes\": 8}"),
          new Collection(
              "pieces",
              "piece",
              Piece.class,
              "{\"id\": \"tray-slate\", \"name\": \"slate tray\", \"mould\": \"tray\","
                  + " \"mix\": \"slate\", \"price\": 24.0, \"leftoverValue\": 12.0}"),
          new Collection(
              "orders",
              "order",
              Order.class,
              "{\"id\": \"O-12\", \"for\": \"R.\", \"due\": \"2027-04-16T17:00\","
                  + " \"lines\": [{\"piece\": \"tray-slate\", \"quantity\": 2}]}"),
          new Collection(
              "channels",
              "channel",
              Channel.class,
              "{\"id\": \"own-table\", \"name\": \"own table\", \"percentFee\": 2.9,"
                  + " \"fixedFee\": 0.3}"),
          new Collection(
              "fairs",
              "fair",
              Fair.class,
              "{\"id\": \"spring-fair\", \"name\": \"spring fair\","
                  + " \"opens\": \"2027-04-24T09:00\", \"tableCost\": 140,"
                  + " \"channel\": \"own-table\", \"demand\": [{\"piece\": \"tray-slate\","
                  + " \"low\": 2, \"likely\": 5, \"high\": 11, \"price\": 24.0}]}"),
          new Collection(
              "pins",
              "pin",
              Pin.class,
              "{\"kind\": \"pour\", \"piece\": \"tray-slate\", \"castings\": 1,"
                  + " \"start\": \"2027-04-06T09:30\", \"person\": \"ana\"}"));

  /** What has happened to the plan in use, as it was reported. */
  static final Collection PROGRESS =
      new Collection(
          "progress",
          "happening",
          Happening.class,
          "Plans",
          "{\"kind\": \"away\", \"person\": \"ana\", \"from\": \"2027-04-10T11:00\","
              + " \"to\": \"2027-04-11T00:00\"}");

  /** The weights of pieces while they dry. */
  static final Collection DRYING =
      new Collection(
          "drying",
          "dryingLog",
          DryingNote.class,
          "The bench",
          "{\"id\": \"planter\", \"name\": \"the large planter\", \"weighings\": ["
              + "{\"at\": \"2027-04-05T09:00\", \"grams\": 5120}]}");

  /** Every list of what is noted beside a book. */
  static final List<Collection> BESIDE = List.of(PROGRESS, DRYING);
}
