package strickle.book;

import java.util.List;

/**
 * A book in the making, for tests that change several collections that belong together before the
 * book is checked: {@code Draft.of(SampleBook.example()).forms(tray).moulds(slab).book()}.
 */
public final class Draft {

  private Studio studio;
  private List<Person> people;
  private List<Station> stations;
  private List<Form> forms;
  private List<Mould> moulds;
  private List<Material> materials;
  private List<Mix> mixes;
  private List<Piece> pieces;
  private List<Order> orders;
  private List<Channel> channels;
  private List<Fair> fairs;
  private List<Pin> pins;

  private Draft() {}

  /** A draft that holds what the book holds. */
  public static Draft of(Book book) {
    Draft draft = new Draft();
    draft.studio = book.studio();
    draft.people = book.people();
    draft.stations = book.stations();
    draft.forms = book.forms();
    draft.moulds = book.moulds();
    draft.materials = book.materials();
    draft.mixes = book.mixes();
    draft.pieces = book.pieces();
    draft.orders = book.orders();
    draft.channels = book.channels();
    draft.fairs = book.fairs();
    draft.pins = book.pins();
    return draft;
  }

  /** Checks and gives the book. */
  public Book book() {
    return new Book(
        studio, people, stations, forms, moulds, materials, mixes, pieces, orders, channels, fairs,
        pins);
  }

  /** Another studio. */
  public Draft studio(Studio given) {
    studio = given;
    return this;
  }

  /** These people and no others. */
  public Draft people(Person... given) {
    people = List.of(given);
    return this;
  }

  /** These stations and no others. */
  public Draft stations(Station... given) {
    stations = List.of(given);
    return this;
  }

  /** These forms and no others. */
  public Draft forms(Form... given) {
    forms = List.of(given);
    return this;
  }

  /** These moulds and no others. */
  public Draft moulds(Mould... given) {
    moulds = List.of(given);
    return this;
  }

  /** These materials and no others. */
  public Draft materials(Material... given) {
    materials = List.of(given);
    return this;
  }

  /** These mixes and no others. */
  public Draft mixes(Mix... given) {
    mixes = List.of(given);
    return this;
  }

  /** These pieces and no others. */
  public Draft pieces(Piece... given) {
    pieces = List.of(given);
    return this;
  }

  /** These orders and no others. */
  public Draft orders(Order... given) {
    orders = List.of(given);
    return this;
  }

  /** These channels and no others. */
  public Draft channels(Channel... given) {
    channels = List.of(given);
    return this;
  }

  /** These fairs and no others. */
  public Draft fairs(Fair... given) {
    fairs = List.of(given);
    return this;
  }

  /** These pins and no others. */
  public Draft pins(Pin... given) {
    pins = List.of(given);
    return this;
  }
}
