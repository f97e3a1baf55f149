package strickle.json.contract;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One thing the service can be asked.
 *
 * @param method GET, PUT, POST or DELETE
 * @param path with its parameters in braces, such as {@code /api/pieces/{id}}
 * @param id a name for programs, such as {@code readPiece}
 * @param topic the heading it stands under
 * @param summary what it does, in a line
 * @param description all there is to know, with units
 * @param parameters values beside the body
 * @param body what it takes; nothing for no body
 * @param example a body that is right; empty for none
 * @param answers how it answers when it goes well; refusals are the same for all
 * @param open whether it is answered before a studio is opened by its password
 */
public record Operation(
    String method,
    String path,
    String id,
    String topic,
    String summary,
    String description,
    List<Parameter> parameters,
    Optional<Shape> body,
    String example,
    List<Answer> answers,
    boolean open) {

  /** An operation without parameters or body. */
  public static Operation of(
      String method, String path, String id, String topic, String summary, String description) {
    return new Operation(
        method,
        path,
        id,
        topic,
        summary,
        description,
        List.of(),
        Optional.empty(),
        "",
        List.of(),
        false);
  }

  private Operation of(
      List<Parameter> given,
      Optional<Shape> taken,
      String shown,
      List<Answer> told,
      boolean toAnybody) {
    return new Operation(
        method, path, id, topic, summary, description, given, taken, shown, told, toAnybody);
  }

  /** The same, answered also before a studio is opened by its password. */
  public Operation toAnybody() {
    return of(parameters, body, example, answers, true);
  }

  /** The same with one parameter more. */
  public Operation with(Parameter parameter) {
    List<Parameter> more = new ArrayList<>(parameters);
    more.add(parameter);
    return of(more, body, example, answers, open);
  }

  /** The same taking a body. */
  public Operation taking(Shape shape, String rightExample) {
    return of(parameters, Optional.of(shape), rightExample, answers, open);
  }

  /** The same with one more answer. */
  public Operation answering(Answer answer) {
    List<Answer> more = new ArrayList<>(answers);
    more.add(answer);
    return of(parameters, body, example, more, open);
  }

  /** The same with other examples: of what it takes, and of its answers. */
  public Operation such(String taken, UnaryOperator<Answer> given) {
    return of(parameters, body, taken, answers.stream().map(given).toList(), open);
  }
}
