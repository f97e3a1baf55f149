package strickle.paper;

import strickle.book.Book;
import strickle.book.Mix;
import strickle.plan.Lot;
import strickle.plan.Run;
import strickle.plan.Weighed;

/** The card of a pour: what to set up, what to lay on, what to weigh; a box to tick for each. */
final class WeighCard {

  /** The step to which a plan weighs, in grams. */
  private static final String STEP = "Scale step 0.1 g.";

  private final Book book;
  private final Names names;
  private final Times times;
  private final Markup body;

  WeighCard(Book book, Names names, Times times, Markup body) {
    this.book = book;
    this.names = names;
    this.times = times;
    this.body = body;
  }

  /** Writes the card of a lot. */
  void write(Stint pour, Lot lot) {
    Mix mix = book.mix(lot.mix());
    body.open("div", "card");
    body.leaf("div", "lot", lot.id() + ": " + mix.name() + ", " + times.spell(pour.spell()));
    body.open("table", "moulds");
    lot.runs().forEach(this::run);
    body.close();
    weighOut(lot);
    body.leaf("p", "note", STEP + " Pour within " + mix.workingMinutes() + " min of mixing.");
    body.close();
  }

  private void run(Run run) {
    body.open("tr", "").tick().open("td", "");
    body.leaf("div", "strong", names.pieces(run) + " (" + run.id() + ")");
    body.leaf("div", "pieces", names.castings(run));
    run.ballastGramsEach().ifPresent(this::ballast);
    body.close().close();
  }

  private void ballast(long grams) {
    if (grams == 0) {
      body.leaf("div", "pieces", "The core needs no ballast.");
    } else {
      body.leaf("div", "ballast", "Ballast " + grams + " g on the core of each casting");
    }
  }

  private void weighOut(Lot lot) {
    body.open("table", "weigh");
    for (Weighed weighed : lot.weighOut()) {
      body.open("tr", "").tick();
      body.leaf("td", "material", names.material(weighed.material()));
      body.leaf("td", "grams", Names.grams(weighed.grams()) + " g").close();
    }
    body.open("tr", "sum").leaf("td", "box", "");
    body.leaf("td", "material", "wet mix, all together");
    body.leaf("td", "grams", Names.grams(lot.wetGrams()) + " g").close();
    body.close();
  }
}
