package strickle.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class BookTest {

  private static final Book EXAMPLE = SampleBook.example();

  private static Draft draft() {
    return Draft.of(EXAMPLE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "people",
        "stations",
        "forms",
        "moulds",
        "materials",
        "mixes",
        "pieces",
        "orders",
        "channels",
        "fairs"
      })
  void anIdIsUniqueInItsCollection(String collection) throws ReflectiveOperationException {
    List<?> items = (List<?>) Book.class.getMethod(collection).invoke(EXAMPLE);
    Record first = (Record) items.get(0);
    List<Object> doubled = new ArrayList<>(items);
    doubled.add(first);

    Fault fault = Faults.only(() -> Altered.of(EXAMPLE, collection, doubled));

    assertEquals("$." + collection + "[" + items.size() + "].id", fault.path());
    assertEquals("one that is not in this list already, at [0]", fault.right());
  }

  @Test
  void theSameIdMayStandInTwoCollections() {
    Form named = Altered.of(SampleBook.tubA(), "id", "ana");

    Book book = draft().forms(named, SampleBook.tubA(), SampleBook.tubB()).book();

    assertEquals(named, book.form("ana"));
    assertEquals(SampleBook.ana(), book.person("ana"));
  }

  static Stream<Arguments> wrongReferences() {
    Mould mould = SampleBook.planterDeep();
    Piece piece = SampleBook.planterSlate();
    Step step = SampleBook.firstSealCoat();
    Use use = SampleBook.use("sealr", "1");
    return Stream.of(
        wrong(
            "$.moulds[0].forms[0].form",
            "tub-c",
            draft().moulds(Altered.of(mould, "forms", List.of(new FormUse("tub-c", 1))))),
        wrong(
            "$.moulds[0].consumes[0].material",
            "sealr",
            draft().moulds(Altered.of(mould, "consumes", List.of(use)))),
        wrong(
            "$.mixes[0].dry[0].material",
            "whiteblend",
            draft()
                .mixes(Altered.of(SampleBook.slate(), "dry", List.of(new Part("whiteblend", 1))))),
        wrong(
            "$.mixes[0].pigment[0].material",
            "iron-blak",
            draft()
                .mixes(
                    Altered.of(
                        SampleBook.slate(),
                        "pigment",
                        List.of(new Dose("iron-blak", 1, Basis.DRY))))),
        wrong(
            "$.pieces[0].mould",
            "planter-dep",
            draft().pieces(Altered.of(piece, "mould", "planter-dep"))),
        wrong("$.pieces[0].mix", "salte", draft().pieces(Altered.of(piece, "mix", "salte"))),
        wrong(
            "$.pieces[0].route[0].by[1]",
            "anna",
            draft()
                .pieces(
                    Altered.of(
                        piece, "route", List.of(Altered.of(step, "by", List.of("ana", "anna")))))),
        wrong(
            "$.pieces[0].route[0].consumes[0].material",
            "sealr",
            draft()
                .pieces(
                    Altered.of(
                        piece, "route", List.of(Altered.of(step, "consumes", List.of(use)))))),
        wrong(
            "$.pieces[0].route[0].restsOn.station",
            "rak",
            draft()
                .pieces(
                    Altered.of(
                        piece,
                        "route",
                        List.of(Altered.of(step, "restsOn", Optional.of(new RestsOn("rak", 1))))))),
        wrong(
            "$.pieces[0].packing[0].material",
            "sealr",
            draft().pieces(Altered.of(piece, "packing", List.of(use)))),
        wrong(
            "$.orders[1].lines[0].piece",
            "planter-slat",
            draft()
                .orders(
                    SampleBook.gardenShop(),
                    SampleBook.order("O-2", "planter-slat", 1, "2027-04-20T17:00"))),
        wrong(
            "$.fairs[0].channel",
            "owntable",
            draft().fairs(Altered.of(SampleBook.springFair(), "channel", "owntable"))),
        wrong(
            "$.fairs[0].demand[0].piece",
            "planter",
            draft()
                .fairs(
                    Altered.of(
                        SampleBook.springFair(),
                        "demand",
                        List.of(Altered.of(AllRecords.DEMAND, "piece", "planter"))))),
        wrong(
            "$.pins[0].piece",
            "planterslate",
            draft().pins(Altered.of(AllRecords.PIN, "piece", "planterslate"))),
        wrong(
            "$.pins[0].person",
            "anna",
            draft().pins(Altered.of(AllRecords.PIN, "person", "anna"))));
  }

  private static Arguments wrong(String path, String id, Draft draft) {
    return Arguments.of(path, id, draft);
  }

  @ParameterizedTest
  @MethodSource("wrongReferences")
  void whateverIsNamedMustBeThere(String path, String id, Draft draft) {
    Fault fault = Faults.only(draft::book);

    assertEquals(path, fault.path());
    assertEquals("\"" + id + "\"", fault.found());
  }

  @Test
  void aWrongIdIsToldWithTheNearest() {
    Draft misspelt = draft().pieces(Altered.of(SampleBook.planterSlate(), "mould", "planter-dep"));
    Draft farOff = draft().pieces(Altered.of(SampleBook.planterSlate(), "mould", "bowl"));

    assertEquals(
        "the id of a mould in the book; did you mean \"planter-deep\"?",
        Faults.only(misspelt::book).right());
    assertEquals("the id of a mould in the book", Faults.only(farOff::book).right());
    assertEquals(
        "the id of a station, but the book has none",
        Faults.only(draft().stations()::book).right());
  }

  @Test
  void allFaultsOfABookAreToldAtOnce() {
    Draft draft =
        draft()
            .people(SampleBook.ana(), SampleBook.ana())
            .moulds()
            .channels()
            .pins(Altered.of(AllRecords.PIN, "person", "nobody"));

    assertEquals(
        List.of("$.people[1].id", "$.pieces[0].mould", "$.fairs[0].channel", "$.pins[0].person"),
        Faults.paths(draft::book));
  }

  @Test
  void missingPartsOfTheBookAreAllToldBeforeAnythingElse() {
    assertEquals(
        List.of("$.studio", "$.people", "$.forms[1]"),
        Faults.paths(
            () ->
                new Book(
                    null,
                    null,
                    List.of(),
                    Arrays.asList(SampleBook.tubA(), null),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(SampleBook.gardenShop()),
                    List.of(),
                    List.of(),
                    List.of())));
  }

  @Test
  void anEmptyBookIsABook() {
    Book empty =
        new Book(
            SampleBook.studio(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());

    assertEquals(List.of(), empty.pieces());
    assertNotEquals(EXAMPLE, empty);
  }

  @Test
  void booksOfTheSamePartsAreEqual() {
    assertEquals(EXAMPLE, SampleBook.example());
    assertEquals(EXAMPLE.hashCode(), SampleBook.example().hashCode());
    assertEquals(List.of(SampleBook.rack()), EXAMPLE.stations());
    assertEquals(EXAMPLE.stations(), List.of(SampleBook.rack()));
    assertNotEquals(EXAMPLE, BookWith.orders(EXAMPLE));
  }

  @Test
  void aBookFullOfWrongIdsIsRefusedInGoodTime() {
    Order[] orders =
        IntStream.range(0, 5000)
            .mapToObj(i -> SampleBook.order("O-" + i, "plantr-" + i, 1, "2027-04-20T17:00"))
            .toArray(Order[]::new);
    Piece[] pieces =
        Stream.concat(
                Stream.of(SampleBook.planterSlate()),
                IntStream.range(0, 5000)
                    .mapToObj(i -> Altered.of(SampleBook.planterSlate(), "id", "planter-no-" + i)))
            .toArray(Piece[]::new);
    Draft draft = draft().pieces(pieces).orders(orders);

    List<Fault> faults =
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> Faults.of(draft::book));

    assertEquals(5000, faults.size());
    assertTrue(faults.get(199).right().contains("did you mean"));
    assertEquals("the id of a piece in the book", faults.get(200).right());
  }
}
