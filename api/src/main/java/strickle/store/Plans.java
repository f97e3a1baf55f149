package strickle.store;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import strickle.book.Book;
import strickle.json.BookPart;
import strickle.json.BookParts;
import strickle.json.ItemFile;
import strickle.json.MeshPart;
import strickle.json.PlanFile;
import strickle.json.StudioFile;
import strickle.plan.Plan;
import strickle.store.KeptPlan.Kind;
import strickle.store.KeptPlan.State;

/** The plans of one studio: asked for, read, stopped and removed. {@link PlanQueue} makes them. */
public final class Plans {

  /** How many may wait in a studio. */
  public static final int MOST_WAITING = 20;

  private final Database database;
  private final String studio;
  private final Clock clock;
  private final Creations creations;

  /** The plans of a studio in a database. */
  Plans(Database database, String studio, Clock clock) {
    this.database = database;
    this.studio = studio;
    this.clock = clock;
    this.creations = new Creations(studio, clock);
  }

  /**
   * Asks for a plan of the studio as it is now; it waits until a queue takes it.
   *
   * @param who who asks
   * @param once asked again with the same key, it is the same plan
   * @param now what the studio holds
   * @param present the plan under way that is to be laid out anew; nothing for one from the start
   * @return the plan's id
   * @throws QueueFull when {@link #MOST_WAITING} wait already
   * @throws KeyReused when the key stands for another request
   */
  public String ask(
      String who, Optional<Once> once, PlanAsked asked, Kept now, Optional<Plan> present) {
    String book = StudioFile.write(now.entries().parts().stream().filter(Plans::isOfBook).toList());
    KeptPlan plan = fresh(new By(who, "").who(), now.book().studio().name(), asked);
    return database.write(
        handle -> {
          StudioTable.hold(handle, studio);
          Optional<String> before = once.flatMap(one -> creations.replied(handle, one));
          if (before.isPresent()) {
            return before.get();
          }
          if (PlanTable.waiting(handle, studio) >= MOST_WAITING) {
            throw new QueueFull(MOST_WAITING);
          }
          PlanTable.add(handle, studio, plan, book, present.map(PlanFile::write));
          once.ifPresent(one -> creations.remember(handle, one, plan.id()));
          return plan.id();
        });
  }

  private KeptPlan fresh(String who, String name, PlanAsked asked) {
    return new KeptPlan(
        UUID.randomUUID().toString(),
        asked.rest().isPresent() ? Kind.REPLAN : Kind.PLAN,
        State.WAITING,
        clock.instant(),
        clock.instant(),
        who,
        name,
        asked,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  private static boolean isOfBook(BookPart part) {
    return part.collection().equals(BookParts.STUDIO)
        || part.collection().equals(MeshPart.COLLECTION)
        || BookParts.LISTS.contains(part.collection());
  }

  /** A plan by its id; nothing when there is none. */
  public Optional<KeptPlan> find(String id) {
    return database.read(handle -> PlanTable.find(handle, studio, id));
  }

  /**
   * The plans there are, newest first.
   *
   * @param after only those asked for before this one; nothing for all
   */
  public List<KeptPlan> list(Optional<String> after, int most) {
    return database.read(handle -> PlanTable.list(handle, studio, after, most));
  }

  /** The plan that came of one that was asked for; nothing when there is none. */
  public Optional<Plan> result(String id) {
    return text(id, PlanTable.Text.RESULT).map(PlanFile::parse);
  }

  /** The book of a plan, as it was when the plan was asked for. */
  public Optional<Book> book(String id) {
    return text(id, PlanTable.Text.BOOK).map(Plans::read);
  }

  /** What is to be laid out; nothing when there is no such plan. */
  Optional<PlanJob> job(String id) {
    return find(id)
        .map(
            plan ->
                new PlanJob(
                    plan.asked(),
                    book(id).orElseThrow(),
                    text(id, PlanTable.Text.PRESENT).map(PlanFile::parse)));
  }

  private Optional<String> text(String id, PlanTable.Text column) {
    return database.read(handle -> PlanTable.text(handle, studio, id, column));
  }

  private static Book read(String file) {
    List<BookPart> parts = StudioFile.parse(file);
    return BookParts.book(parts, new KeptMeshes(Entries.ofParts(parts)));
  }

  /**
   * Stops a plan: one that waits is over at once, one that is being laid out soon, and its best so
   * far is kept. One that is over stays as it is.
   *
   * @return nothing when there is no such plan
   */
  public Optional<KeptPlan> stop(String id) {
    return database.write(
        handle -> {
          PlanTable.stop(handle, studio, id, clock.instant());
          return PlanTable.find(handle, studio, id);
        });
  }

  /**
   * Which of the plans is the one a studio works by: the newest that was the same to the letter
   * when it was first looked for, and stays it, since the plan in use is not removed. Where there
   * is none, one may be laid out yet that is.
   *
   * @param now what the studio holds
   * @return its id; nothing when none is in use, or it is not among the plans any more
   */
  public Optional<String> inUse(Kept now) {
    return now.workedOut(InUse.class, none -> new InUse(new AtomicReference<>(Optional.empty())))
        .id
        .updateAndGet(known -> known.or(() -> sought(now)));
  }

  private record InUse(AtomicReference<Optional<String>> id) {}

  private Optional<String> sought(Kept now) {
    return now.entries()
        .find(StudioFile.PLAN_IN_USE, StudioFile.CURRENT)
        .map(Entry::body)
        .map(ItemFile::pretty)
        .flatMap(plan -> database.read(handle -> PlanTable.same(handle, studio, plan)));
  }

  /** What comes of removing a plan. */
  public enum Removal {
    /** It is gone. */
    DONE,
    /** There is none of this id. */
    NOT_THERE,
    /** It is being laid out, so it is still there. */
    RUNNING,
    /** The studio works by it, so it is still there. */
    IN_USE
  }

  /**
   * Removes a plan and the book it is of, unless it is being laid out or the studio works by it.
   * What was in use before stays in the journal whole, so undo and redo need no plan from here.
   *
   * @param now what the studio holds
   */
  public Removal remove(String id, Kept now) {
    if (inUse(now).filter(id::equals).isPresent()) {
      return Removal.IN_USE;
    }
    return database.write(
        handle -> {
          if (PlanTable.remove(handle, studio, id)) {
            return Removal.DONE;
          }
          boolean there = PlanTable.find(handle, studio, id).isPresent();
          return there ? Removal.RUNNING : Removal.NOT_THERE;
        });
  }
}
