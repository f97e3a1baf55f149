package strickle.api;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import strickle.book.Fault;
import strickle.book.Faulty;
import strickle.book.LengthUnit;
import strickle.book.MeshFile;
import strickle.json.MeshPart;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.mix.StlMesh;
import strickle.store.Entries;
import strickle.store.Entry;

/** The meshes a studio keeps, which moulds name as their mesh. */
final class MeshRoutes {

  /** Bytes a mesh may have here. */
  static final int MOST_BYTES = 16 * 1024 * 1024;

  /** Bytes all meshes of a studio may have together, so that it still fits into its file. */
  private static final long MOST_BYTES_TOGETHER = 32L * 1024 * 1024;

  private static final String TOPIC = "The book";
  private static final String ROOT = "/api/" + MeshPart.COLLECTION;
  private static final Shape STL = new Shape.Bytes("model/stl");

  /** A tetrahedron, as the text of an STL file. */
  static final String EXAMPLE =
      """
      solid corner
      facet normal 0 0 -1 outer loop vertex 0 0 0 vertex 0 30 0 vertex 30 0 0 endloop endfacet
      facet normal 0 -1 0 outer loop vertex 0 0 0 vertex 30 0 0 vertex 0 0 30 endloop endfacet
      facet normal -1 0 0 outer loop vertex 0 0 0 vertex 0 0 30 vertex 0 30 0 endloop endfacet
      facet normal 1 1 1 outer loop vertex 30 0 0 vertex 0 30 0 vertex 0 0 30 endloop endfacet
      endsolid corner
      """;

  /**
   * The meshes there are.
   *
   * @param items by name
   */
  public record MeshList(List<KeptMesh> items) {}

  /**
   * A mesh that is kept.
   *
   * @param file its name, by which moulds name it
   * @param bytes how long the file is
   */
  public record KeptMesh(String file, int bytes) {}

  private MeshRoutes() {}

  /** The routes. */
  static List<Route> all() {
    Shape one = Shape.of(KeptMesh.class);
    return List.of(
        new Route(
            Operation.of("GET", ROOT, "listMeshes", TOPIC, "The meshes.", "STL files, in bytes.")
                .answering(Answer.of(Status.OK, "All of them.", Shape.of(MeshList.class))),
            MeshRoutes::list),
        new Route(
            single("GET", "readMesh", "The STL file of a mesh.", "As it was put.")
                .answering(Answer.of(Status.OK, "The file.", STL, "ETag")),
            MeshRoutes::read),
        new Route(
            single(
                    "PUT",
                    "putMesh",
                    "Keep a mesh.",
                    "A closed STL file, text or binary, up to 16 MB, all together up to 32 MB. A"
                        + " mould then names it in \"mesh\". One in whose place it comes has its"
                        + " ETag in If-Match; a new one needs none.")
                .with(
                    Parameter.header(
                        Matching.HEADER, "The ETag of the one in whose place it comes.", "\"…\""))
                .with(Who.PARAMETER)
                .taking(STL, EXAMPLE)
                .answering(Answer.of(Status.OK, "It is in its place.", one, "ETag"))
                .answering(Answer.of(Status.CREATED, "It is kept.", one, "ETag", "Location")),
            MeshRoutes::put),
        new Route(
            single(
                    "DELETE",
                    "removeMesh",
                    "No such mesh any more.",
                    "Refused while a mould has it.")
                .with(Matching.PARAMETER)
                .with(Who.PARAMETER)
                .answering(Answer.empty(Status.DONE, "It is gone.")),
            MeshRoutes::remove));
  }

  private static Operation single(String method, String id, String summary, String text) {
    return Operation.of(method, ROOT + "/{file}", id, TOPIC, summary, text)
        .with(Parameter.path("file", "Its plain name, ending in .stl.", "bowl.stl"));
  }

  private static Reply list(Call call) {
    List<KeptMesh> items =
        call.studio().now().entries().list(MeshPart.COLLECTION).stream()
            .map(entry -> new KeptMesh(entry.id(), MeshPart.bytes(entry.body()).length))
            .toList();
    return Reply.json(Status.OK, Message.write(new MeshList(items)));
  }

  private static Reply read(Call call) {
    Entry mesh = found(call.studio().now().entries(), call);
    return Matching.reading(
        call,
        Etag.of(mesh.body()),
        () -> Reply.bytes(STL.mediaType(), MeshPart.bytes(mesh.body())));
  }

  private static Reply put(Call call) {
    String name = name(call);
    byte[] stl = call.bytes(MOST_BYTES);
    told(() -> StlMesh.read(stl));
    String body = MeshPart.of(stl);
    boolean[] made = {false};
    call.studio()
        .change(
            call.by("mesh " + name + " kept"),
            now -> {
              Optional<Entry> before = now.entries().find(MeshPart.COLLECTION, name);
              before.ifPresent(one -> Matching.check(call, Etag.of(one.body()), List::of));
              made[0] = before.isEmpty();
              return fitting(now.entries().with(MeshPart.COLLECTION, name, body));
            });
    String json = Message.write(new KeptMesh(name, stl.length));
    Reply reply = Reply.json(made[0] ? Status.CREATED : Status.OK, json);
    Reply tagged = reply.with("ETag", Etag.of(body));
    return made[0] ? tagged.with("Location", Addresses.below(ROOT, name)) : tagged;
  }

  private static String name(Call call) {
    String name = call.path("file");
    return Queries.told(
        Map.of(".file", "file"),
        () -> new MeshFile(name, LengthUnit.MM, OptionalDouble.empty()).file());
  }

  private static Entries fitting(Entries after) {
    long together =
        after.list(MeshPart.COLLECTION).stream()
            .mapToLong(entry -> MeshPart.bytes(entry.body()).length)
            .sum();
    if (together > MOST_BYTES_TOGETHER) {
      String right = "at most " + MOST_BYTES_TOGETHER + " bytes of meshes in a studio";
      throw new Faulty(List.of(new Fault("$", together + " bytes together", right)));
    }
    return after;
  }

  private static Reply remove(Call call) {
    call.studio()
        .change(
            call.by("mesh " + call.path("file") + " removed"),
            now -> {
              Entry before = found(now.entries(), call);
              Matching.check(call, Etag.of(before.body()), List::of);
              return now.entries().without(MeshPart.COLLECTION, before.id());
            });
    return Reply.empty(Status.DONE);
  }

  private static Entry found(Entries entries, Call call) {
    String name = call.path("file");
    return entries
        .find(MeshPart.COLLECTION, name)
        .orElseThrow(() -> Refusal.notThere("mesh " + name));
  }

  /** Tells faults of a whole file as faults of the body. */
  static <T> T told(Supplier<T> work) {
    try {
      return work.get();
    } catch (Faulty faulty) {
      throw new Faulty(faulty.faults().stream().map(fault -> fault.under("$")).toList());
    }
  }
}
