package strickle.book;

/** Books that differ from another in one collection. */
public final class BookWith {

  private BookWith() {}

  /** The book with another studio. */
  public static Book studio(Book book, Studio studio) {
    return Draft.of(book).studio(studio).book();
  }

  /** The book with these people and no others. */
  public static Book people(Book book, Person... people) {
    return Draft.of(book).people(people).book();
  }

  /** The book with these stations and no others. */
  public static Book stations(Book book, Station... stations) {
    return Draft.of(book).stations(stations).book();
  }

  /** The book with these forms and no others. */
  public static Book forms(Book book, Form... forms) {
    return Draft.of(book).forms(forms).book();
  }

  /** The book with these moulds and no others. */
  public static Book moulds(Book book, Mould... moulds) {
    return Draft.of(book).moulds(moulds).book();
  }

  /** The book with these materials and no others. */
  public static Book materials(Book book, Material... materials) {
    return Draft.of(book).materials(materials).book();
  }

  /** The book with these mixes and no others. */
  public static Book mixes(Book book, Mix... mixes) {
    return Draft.of(book).mixes(mixes).book();
  }

  /** The book with these pieces and no others. */
  public static Book pieces(Book book, Piece... pieces) {
    return Draft.of(book).pieces(pieces).book();
  }

  /** The book with these orders and no others. */
  public static Book orders(Book book, Order... orders) {
    return Draft.of(book).orders(orders).book();
  }

  /** The book with these channels and no others. */
  public static Book channels(Book book, Channel... channels) {
    return Draft.of(book).channels(channels).book();
  }

  /** The book with these fairs and no others. */
  public static Book fairs(Book book, Fair... fairs) {
    return Draft.of(book).fairs(fairs).book();
  }

  /** The book with these pins and no others. */
  public static Book pins(Book book, Pin... pins) {
    return Draft.of(book).pins(pins).book();
  }
}
