package strickle.plan;

import strickle.book.Book;
import strickle.book.Mix;
import strickle.book.Mould;
import strickle.book.Step;

/** Minutes that the tasks of a plan need by its book. */
public final class TaskMinutes {

  private TaskMinutes() {}

  /** Minutes of the pour of a lot. */
  public static int pour(Book book, Lot lot) {
    Mix mix = book.mix(lot.mix());
    int minutes = mix.mixMinutes() + mix.washMinutes();
    for (Run run : lot.runs()) {
      Mould mould = book.mould(book.piece(run.piece()).mould());
      minutes += run.castings() * (mould.prepMinutes() + mould.pourMinutes());
    }
    return minutes;
  }

  /** Minutes of the task of a run that comes after so many others: the demould after the pour. */
  public static int after(Book book, Run run, int before) {
    Mould mould = book.mould(book.piece(run.piece()).mould());
    if (before == 1) {
      return run.castings() * mould.demouldMinutes();
    }
    Step step = book.piece(run.piece()).route().get(before - 2);
    return step.setupMinutes() + Goods.pieces(book, run) * step.minutesEach();
  }
}
