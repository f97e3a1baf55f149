package strickle.book;

import java.util.List;

/**
 * A studio book: what the studio owns, makes and owes. In a book that could be built, every id that
 * is named is there. Whether the book's pieces can ever be made is another question, which {@link
 * Feasible} answers.
 *
 * <p>All lists are unmodifiable, and ids are unique within each.
 *
 * @param studio the studio itself
 * @param people who works in it
 * @param stations where pieces lie while they wait
 * @param forms what shapes
 * @param moulds ways to set forms up
 * @param materials what is bought and used up
 * @param mixes recipes
 * @param pieces what is for sale
 * @param orders what is owed
 * @param channels ways to sell
 * @param fairs fairs to bring pieces to
 * @param pins pours that are settled
 */
public record Book(
    Studio studio,
    List<Person> people,
    List<Station> stations,
    List<Form> forms,
    List<Mould> moulds,
    List<Material> materials,
    List<Mix> mixes,
    List<Piece> pieces,
    List<Order> orders,
    List<Channel> channels,
    List<Fair> fairs,
    List<Pin> pins) {

  /**
   * Checks what no part of the book can check alone: unique ids, references, and what the mixes
   * need to know of their materials.
   *
   * @throws Faulty with every fault, paths starting at the book, such as {@code $.pieces[2].mould}
   */
  public Book(
      Studio studio,
      List<Person> people,
      List<Station> stations,
      List<Form> forms,
      List<Mould> moulds,
      List<Material> materials,
      List<Mix> mixes,
      List<Piece> pieces,
      List<Order> orders,
      List<Channel> channels,
      List<Fair> fairs,
      List<Pin> pins) {
    Check check = new Check();
    check.given("$.studio", studio, "the studio with its name, currency and time zone");
    this.studio = studio;
    this.people = new Register<>("person", check.list("$.people", people), Person::id);
    this.stations = new Register<>("station", check.list("$.stations", stations), Station::id);
    this.forms = new Register<>("form", check.list("$.forms", forms), Form::id);
    this.moulds = new Register<>("mould", check.list("$.moulds", moulds), Mould::id);
    this.materials = new Register<>("material", check.list("$.materials", materials), Material::id);
    this.mixes = new Register<>("mix", check.list("$.mixes", mixes), Mix::id);
    this.pieces = new Register<>("piece", check.list("$.pieces", pieces), Piece::id);
    this.orders = new Register<>("order", check.list("$.orders", orders), Order::id);
    this.channels = new Register<>("channel", check.list("$.channels", channels), Channel::id);
    this.fairs = new Register<>("fair", check.list("$.fairs", fairs), Fair::id);
    this.pins = check.list("$.pins", pins);
    check.done();
    new BookRules(this, check).apply();
    check.done();
  }

  /**
   * The person with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Person person(String id) {
    return Register.of(people).item(id);
  }

  /**
   * The station with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Station station(String id) {
    return Register.of(stations).item(id);
  }

  /**
   * The form with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Form form(String id) {
    return Register.of(forms).item(id);
  }

  /**
   * The mould with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Mould mould(String id) {
    return Register.of(moulds).item(id);
  }

  /**
   * The material with this id; {@link Material#WATER} is not one.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Material material(String id) {
    return Register.of(materials).item(id);
  }

  /**
   * The mix with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Mix mix(String id) {
    return Register.of(mixes).item(id);
  }

  /**
   * The piece with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Piece piece(String id) {
    return Register.of(pieces).item(id);
  }

  /**
   * The order with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Order order(String id) {
    return Register.of(orders).item(id);
  }

  /**
   * The channel with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Channel channel(String id) {
    return Register.of(channels).item(id);
  }

  /**
   * The fair with this id.
   *
   * @throws IllegalArgumentException when there is none, naming the nearest there is
   */
  public Fair fair(String id) {
    return Register.of(fairs).item(id);
  }

  /** The same book with these forms in place of its own. */
  public Book withForms(List<Form> others) {
    return new Book(
        studio, people, stations, others, moulds, materials, mixes, pieces, orders, channels, fairs,
        pins);
  }

  /** The same book with these orders in place of its own. */
  public Book withOrders(List<Order> others) {
    return with(others, pins);
  }

  /** The same book with these pins in place of its own. */
  public Book withPins(List<Pin> others) {
    return with(orders, others);
  }

  private Book with(List<Order> otherOrders, List<Pin> otherPins) {
    return new Book(
        studio,
        people,
        stations,
        forms,
        moulds,
        materials,
        mixes,
        pieces,
        otherOrders,
        channels,
        fairs,
        otherPins);
  }
}
