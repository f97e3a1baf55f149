package strickle.demo;

import static strickle.demo.PieceEntry.piece;
import static strickle.demo.StepEntry.step;

import java.util.List;
import strickle.book.Piece;
import strickle.book.WaitKind;

/** What is for sale: each piece with its route and its price. */
final class DemoPieces {

  private DemoPieces() {}

  static List<Piece> pieces() {
    return List.of(
        lantern("lantern-tall-basalt", "tall lantern, basalt", "lantern-tall", "basalt")
            .good(92, 1)
            .packed("box-l", "1")
            .price("84.00", "55.00"),
        lantern("lantern-low-basalt", "low lantern, basalt", "lantern-low", "basalt")
            .good(94, 1)
            .onHand(1)
            .packed("box-m", "1")
            .price("62.00", "40.00"),
        lantern("lantern-low-fog", "low lantern, fog", "lantern-low", "fog")
            .good(90, 1)
            .packed("box-m", "1")
            .price("66.00", "42.00"),
        tealight("tealight-fog", "tealight cup, fog", "fog").onHand(3).price("14.00", "9.00"),
        tealight("tealight-brick", "tealight cup, brick", "brick").price("14.00", "9.00"),
        doorstop(),
        bookends(),
        hook(),
        matchPot());
  }

  private static PieceEntry lantern(String id, String name, String mould, String mix) {
    return piece(id, name)
        .from(mould, mix)
        .route(
            step("rub down the rim and bag")
                .takes(4, 7)
                .after(WaitKind.REST, 0)
                .atMost(72)
                .restsOn("curing-shelf", 2),
            step("first seal coat")
                .takes(5, 5)
                .after(WaitKind.CURE, 96)
                .by("maren")
                .uses("sealer", "20")
                .restsOn("rack", 2),
            step("second seal coat")
                .takes(5, 4)
                .after(WaitKind.DRY, 4)
                .atMost(96)
                .by("maren")
                .uses("sealer", "14")
                .restsOn("rack", 2),
            step("felt the foot").takes(3, 2).after(WaitKind.DRY, 12).uses("felt-pad", "4"))
        .finalDry(24);
  }

  private static PieceEntry tealight(String id, String name, String mix) {
    return piece(id, name)
        .from("tealight-four", mix)
        .good(95, 2)
        .route(
            step("knock off the flash").takes(3, 1).after(WaitKind.REST, 1),
            step("wax")
                .takes(4, 2)
                .after(WaitKind.CURE, 72)
                .uses("finish-wax", "2")
                .restsOn("rack", 1))
        .finalDry(12)
        .packed("box-s", "0.25");
  }

  private static Piece doorstop() {
    return piece("doorstop-brick", "doorstop, brick")
        .from("doorstop", "brick")
        .good(100, 2)
        .onHand(1)
        .route(
            step("bevel the edges").takes(3, 4).after(WaitKind.REST, 0).atMost(72),
            step("glue the felt").takes(3, 3).after(WaitKind.DRY, 48).uses("felt-pad", "2"))
        .finalDry(8)
        .packed("box-s", "1")
        .price("32.00", "20.00");
  }

  private static Piece bookends() {
    return piece("bookends-basalt", "pair of bookends, basalt")
        .from("bookend-pair", "basalt")
        .good(90, 1)
        .route(
            step("flatten the backs")
                .takes(5, 8)
                .after(WaitKind.CURE, 24)
                .atMost(168)
                .by("tobias")
                .restsOn("curing-shelf", 2),
            step("seal coat")
                .takes(5, 6)
                .after(WaitKind.CURE, 72)
                .by("maren")
                .uses("sealer", "24")
                .restsOn("rack", 2),
            step("felt the feet")
                .takes(3, 4)
                .after(WaitKind.DRY, 6)
                .atMost(120)
                .uses("felt-pad", "8"))
        .finalDry(12)
        .packed("box-m", "1")
        .price("78.00", "50.00");
  }

  private static Piece hook() {
    return piece("hook-fog", "wall hook, fog")
        .from("hooks-three", "fog")
        .good(94, 2)
        .onHand(2)
        .route(
            step("pick out the threads").takes(3, 2).after(WaitKind.REST, 0).atMost(72),
            step("seal coat")
                .takes(5, 2)
                .after(WaitKind.CURE, 72)
                .by("maren")
                .uses("sealer", "6")
                .restsOn("rack", 1))
        .finalDry(24)
        .packed("box-s", "0.5")
        .price("24.00", "15.00");
  }

  private static Piece matchPot() {
    return piece("match-pot-brick", "match pot, brick")
        .from("match-pot-two", "brick")
        .good(95, 1)
        .route(
            step("grind the striking band")
                .takes(4, 3)
                .after(WaitKind.CURE, 48)
                .restsOn("curing-shelf", 1),
            step("wax").takes(4, 2).after(WaitKind.REST, 2).atMost(96).uses("finish-wax", "3"))
        .packed("box-s", "0.5")
        .price("28.00", "18.00");
  }
}
