package strickle.api;

import java.util.List;
import java.util.stream.Stream;
import strickle.json.ContractFile;
import strickle.json.Message;
import strickle.json.contract.Answer;
import strickle.json.contract.Operation;
import strickle.json.contract.Shape;

/** What the service says of itself: its contract, and that it is well. */
final class Contract {

  private static final String TOPIC = "The service";

  /**
   * Whether the service is well.
   *
   * @param status always "ok": when it is not, there is another answer
   * @param version of the program
   */
  public record Health(String status, String version) {}

  private Contract() {}

  /**
   * The routes of the contract and of health.
   *
   * @param others every other operation
   * @param version of the program
   */
  static List<Route> routes(List<Operation> others, String version) {
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
        Operation.of("GET", "/health", "readHealth", TOPIC, "Whether it is well.", "For watchdogs.")
            .answering(Answer.of(Status.OK, "It is.", Shape.of(Health.class)));
    List<Operation> all = Stream.concat(others.stream(), Stream.of(contract, health)).toList();
    String document = ContractFile.write(all, Shape.of(Problem.class), version);
    String tag = Etag.of(document);
    return List.of(
        new Route(
            contract, call -> Matching.reading(call, tag, () -> Reply.json(Status.OK, document))),
        new Route(health, call -> Reply.json(Status.OK, Message.write(new Health("ok", version)))));
  }
}
