package strickle.api;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import strickle.json.ContractExamples;
import strickle.json.ContractFile;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;

/** What the service says of itself: its contract, and that it is well. */
final class Contract {

  private static final String TOPIC = "The service";

  /**
   * That the service is well.
   *
   * @param status always "ok": when it is not, the answer is another (503)
   * @param version of the program
   */
  public record Health(String status, String version) {}

  private Contract() {}

  /**
   * The routes of the contract and of health.
   *
   * @param others every other operation
   * @param look asks the database something small; throws when that cannot be answered
   * @param version of the program
   */
  static List<Route> routes(List<Operation> others, Runnable look, String version) {
    Operation contract =
        Operation.of(
                "GET",
                "/api/openapi.json",
                "readContract",
                TOPIC,
                "This document.",
                "OpenAPI 3.1, made from what the service really offers.")
            .answering(
                Answer.of(Status.OK, "It.", new Shape.Anything("An OpenAPI document."), "ETag"));
    Operation health =
        Operation.of(
                "GET",
                "/health",
                "readHealth",
                TOPIC,
                "Whether it is well.",
                "For watchdogs: it serves, and its database answers (503 when it does not).")
            .toAnybody()
            .answering(Answer.of(Status.OK, "It is.", Shape.of(Health.class)));
    List<Operation> all = Stream.concat(others.stream(), Stream.of(contract, health)).toList();
    Written document = new Written(all, version);
    return List.of(
        new Route(
            contract,
            call ->
                Matching.reading(
                    call, document.tag(), () -> Reply.json(Status.OK, document.text()))),
        new Route(
            health,
            call -> {
              look.run();
              return Reply.json(Status.OK, Message.write(new Health("ok", version)));
            }));
  }

  /** The document, written when it is first asked for: a start need not wait for it. */
  private static final class Written {

    private final List<Operation> operations;
    private final String version;
    private Optional<String> text = Optional.empty();
    private String tag = "";

    Written(List<Operation> operations, String version) {
      this.operations = operations;
      this.version = version;
    }

    synchronized String text() {
      if (text.isEmpty()) {
        List<Operation> shown = ContractExamples.of(examples()).in(operations);
        text =
            Optional.of(
                ContractFile.write(shown, Shape.of(Problem.class), SessionCookie.NAME, version));
        tag = Etag.of(text.get());
      }
      return text.get();
    }

    synchronized String tag() {
      text();
      return tag;
    }

    private static String examples() {
      try (InputStream file = Contract.class.getResourceAsStream("examples.json")) {
        return new String(file.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException unreadable) {
        throw new UncheckedIOException(unreadable);
      }
    }
  }
}
