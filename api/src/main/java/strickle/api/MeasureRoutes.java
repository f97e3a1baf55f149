package strickle.api;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import strickle.book.LengthUnit;
import strickle.json.AnswerFile;
import strickle.json.BallastAnswer;
import strickle.json.CoatAnswer;
import strickle.json.CuringAnswer;
import strickle.json.DryingAnswer;
import strickle.json.LiftAnswer;
import strickle.json.RoomAnswer;
import strickle.json.VolumeAnswer;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Parameter;
import strickle.json.contract.Shape;
import strickle.mix.StlMesh;
import strickle.store.Entries;
import strickle.store.KeptMeshes;

/** What is worked out at the bench from what is sent, without changing anything. */
final class MeasureRoutes {

  private static final String TOPIC = "The bench";
  private static final String MESH = "model/stl";

  private MeasureRoutes() {}

  /** The routes. */
  static List<Route> all() {
    return List.of(
        asked(
            "volume",
            "workOutVolume",
            "How much a mould holds.",
            "From solids added and taken away (millimetres), a vessel of an outer and an inner"
                + " solid, a mesh the studio keeps, the water that fills it, or a known pour.",
            VolumeWanted.class,
            "{\"shape\": [{\"solid\": \"cylinder\", \"radiusMm\": 60, \"heightMm\": 90},"
                + " {\"solid\": \"cylinder\", \"radiusMm\": 50, \"heightMm\": 80,"
                + " \"subtract\": true}]}",
            new Shape.Of(VolumeAnswer.class, VolumeAnswer.FORMAT),
            call ->
                write(
                    VolumeAnswer.FORMAT,
                    call.body(VolumeWanted.class).answer(new KeptMeshes(entries(call))))),
        new Route(
            operation(
                    "POST",
                    "/api/volume/mesh",
                    "measureMesh",
                    "How much a mesh holds.",
                    "Of a closed STL file, text or binary, up to 16 MB, which is not kept. One"
                        + " that is not closed is refused with the number of its open edges.")
                .with(
                    Parameter.query(
                        "unit",
                        Parameter.Kind.TEXT,
                        "What one unit of the mesh is, mm or inch; mm without it.",
                        "mm"))
                .taking(new Shape.Bytes(MESH), MeshRoutes.EXAMPLE)
                .answering(
                    Answer.of(
                        Status.OK,
                        "The volume.",
                        new Shape.Of(VolumeAnswer.class, VolumeAnswer.FORMAT))),
            MeasureRoutes::mesh),
        asked(
            "ballast",
            "workOutBallast",
            "What to lay on a core, and how hard the mix presses.",
            "For a core that hangs in wet mix or is sealed on the mould's floor; with a depth also"
                + " the pressure there, with a wall the push on it. Grams, newtons, pascals.",
            BallastWanted.class,
            "{\"displacedMl\": 2600, \"massGrams\": 140, \"densityKgPerM3\": 2115}",
            new Shape.Of(BallastAnswer.class, BallastAnswer.FORMAT),
            call -> write(BallastAnswer.FORMAT, call.body(BallastWanted.class).answer())),
        new Route(
            operation(
                    "GET",
                    "/api/ballast",
                    "readBallast",
                    "The ballast of every piece that is cast with a core.",
                    "In grams on the core of each casting.")
                .answering(
                    Answer.of(
                        Status.OK,
                        "Piece by piece.",
                        new Shape.Of(BallastAnswer.class, BallastAnswer.FORMAT))),
            call -> write(BallastAnswer.FORMAT, BallastAnswer.of(call.studio().now().book()))),
        asked(
            "curing",
            "workOutCuring",
            "How long setting and curing take at a temperature.",
            "As a band in hours; how old a casting is by what it has been through; what castings"
                + " that were found ready say; and, for information only, how strong it may be.",
            CuringWanted.class,
            "{\"hours\": 16, \"roomsC\": [12, 25],"
                + " \"spent\": [{\"hours\": 6, \"temperatureC\": 15}]}",
            new Shape.Of(CuringAnswer.class, CuringAnswer.FORMAT),
            call -> write(CuringAnswer.FORMAT, call.body(CuringWanted.class).answer())),
        asked(
            "drying-fit",
            "fitWeights",
            "When a piece has dried far enough, from weights that are sent.",
            "From five weighings on, each figure with a band that holds in 90 of 100 cases. Nothing"
                + " is kept; logs that are kept stand at /api/drying.",
            DryingWanted.class,
            "{\"weighings\": [{\"days\": 0, \"grams\": 2306.2}, {\"days\": 1, \"grams\": 2287.4},"
                + " {\"days\": 2, \"grams\": 2272.6}, {\"days\": 4, \"grams\": 2252.9},"
                + " {\"days\": 7, \"grams\": 2236.5}, {\"days\": 9, \"grams\": 2231}]}",
            new Shape.Of(DryingAnswer.class, DryingAnswer.FORMAT),
            call ->
                write(
                    DryingAnswer.FORMAT,
                    call.body(DryingWanted.class)
                        .answer(call.studio().now().book().studio().timeZone()))),
        asked(
            "room",
            "judgeAir",
            "What an air does to a pour and a coat.",
            "Water a fresh pour loses in kg/m²/h, an estimate that may be 40 % off, and the dew"
                + " point in °C.",
            AirWanted.class,
            "{\"airC\": 22, \"humidityPercent\": 78, \"windKmPerHour\": 10}",
            new Shape.Of(RoomAnswer.class, RoomAnswer.FORMAT),
            call -> write(RoomAnswer.FORMAT, call.body(AirWanted.class).answer())),
        asked(
            "coat",
            "workOutCoat",
            "How much coating or leaf an area takes.",
            "A film by its volume solids and dry thickness (litres), what soaks in by grams on a"
                + " square metre, leaf in sheets and books.",
            CoatWanted.class,
            "{\"areaM2\": 1.2, \"coats\": 2, \"solidsPercent\": 40, \"dryFilmMm\": 0.025}",
            new Shape.Of(CoatAnswer.class, CoatAnswer.FORMAT),
            call ->
                write(
                    CoatAnswer.FORMAT,
                    call.body(CoatWanted.class).answer(new KeptMeshes(entries(call))))),
        asked(
            "lift",
            "judgeLift",
            "What one person should lift at most.",
            "By the metric form of NIOSH's lifting equation, in kg, with all its factors.",
            LiftWanted.class,
            "{\"massKg\": 25, \"reachMm\": 400}",
            new Shape.Of(LiftAnswer.class, LiftAnswer.FORMAT),
            call -> write(LiftAnswer.FORMAT, call.body(LiftWanted.class).answer())));
  }

  private static Route asked(
      String path,
      String id,
      String summary,
      String text,
      Class<? extends Record> wanted,
      String example,
      Shape answer,
      Function<Call, Reply> work) {
    Operation operation =
        operation("POST", "/api/" + path, id, summary, text)
            .taking(Shape.of(wanted), example)
            .answering(Answer.of(Status.OK, "What came out.", answer));
    return new Route(operation, call -> Thinking.told(() -> work.apply(call)));
  }

  private static Operation operation(
      String method, String path, String id, String summary, String text) {
    return Operation.of(method, path, id, TOPIC, summary, text);
  }

  private static Entries entries(Call call) {
    return call.studio().now().entries();
  }

  private static Reply write(String format, Record answer) {
    return Reply.json(Status.OK, AnswerFile.write(format, answer));
  }

  private static Reply mesh(Call call) {
    call.studio();
    Optional<LengthUnit> unit = call.query("unit").map(MeasureRoutes::unit);
    byte[] stl = call.bytes(Math.min(StlMesh.MOST_BYTES, MeshRoutes.MOST_BYTES));
    return MeshRoutes.told(() -> write(VolumeAnswer.FORMAT, VolumeWanted.ofMesh(stl, unit)));
  }

  private static LengthUnit unit(String word) {
    return switch (word) {
      case "mm" -> LengthUnit.MM;
      case "inch" -> LengthUnit.INCH;
      default -> throw Refusal.malformed("unit", '"' + word + '"', "mm or inch");
    };
  }
}
