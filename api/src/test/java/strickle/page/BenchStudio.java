package strickle.page;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import strickle.book.Book;
import strickle.book.Form;
import strickle.book.Person;
import strickle.book.Window;
import strickle.demo.Generator;
import strickle.json.BookFile;

/**
 * A studio to measure the page with, in a service of its own process, started as a person starts it
 * and with a plan in use that the service laid out.
 */
final class BenchStudio implements AutoCloseable {

  /** The plans of made-up books begin here. */
  static final String BEGINS = "2027-03-01";

  private static final int FORMS = 300;
  private static final int SCHEDULES = 40;

  private final HttpClient client = HttpClient.newHttpClient();
  private final Process process;
  private final String address;

  private BenchStudio(Process process, String address) {
    this.process = process;
    this.address = address;
  }

  /** The studio that the figures of every room are for. */
  static Book ofCastings(int castings) {
    return Generator.book(castings, 1);
  }

  /**
   * A studio with 300 forms, whose people cast for four weeks or so: a made-up book with more of
   * each form, and people who are there all day.
   */
  static Book wide(int castings) {
    Book made = Generator.book(castings, 1);
    List<Form> forms = many(made.forms());
    List<Person> people = made.people().stream().map(BenchStudio::allDay).toList();
    return new Book(
        made.studio(),
        people,
        made.stations(),
        forms,
        made.moulds(),
        made.materials(),
        made.mixes(),
        made.pieces(),
        made.orders(),
        made.channels(),
        made.fairs(),
        made.pins());
  }

  /**
   * As many of each as before beside the others, 300 in all; what rounding leaves goes to the
   * first.
   */
  private static List<Form> many(List<Form> forms) {
    double factor = (double) FORMS / forms.stream().mapToInt(Form::count).sum();
    List<Form> many = new ArrayList<>(forms.stream().map(form -> times(form, factor)).toList());
    Form first = many.getFirst();
    int missing = FORMS - many.stream().mapToInt(Form::count).sum();
    many.set(0, times(first, 1 + (double) missing / first.count()));
    return many;
  }

  private static Form times(Form form, double factor) {
    int count = Math.max(1, (int) Math.round(form.count() * factor));
    return new Form(form.id(), form.name(), count, form.costEach(), form.lifeCastings());
  }

  private static Person allDay(Person person) {
    Map<DayOfWeek, List<Window>> hours = new EnumMap<>(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      if (day != DayOfWeek.SUNDAY) {
        hours.put(day, List.of(new Window(8 * 60, 18 * 60)));
      }
    }
    return new Person(person.id(), person.name(), hours, person.exceptions());
  }

  /**
   * Starts a service on a folder, gives it the book and works by a plan.
   *
   * @param launcher the program that starts Strickle
   */
  static BenchStudio start(Path launcher, Path data, Book book) {
    BenchStudio studio = start(launcher, data);
    studio.ask("POST", "/api/studios", "{\"name\": \"Bench\", \"begin\": \"empty\"}", "*");
    studio.ask("PUT", "/api/book", BookFile.write(book), "*");
    studio.workByAPlan();
    return studio;
  }

  private static BenchStudio start(Path launcher, Path data) {
    try {
      Process process =
          new ProcessBuilder(
                  launcher.toString(),
                  "serve",
                  "--port",
                  "0",
                  "--log-level",
                  "error",
                  "--data",
                  data.toString())
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      BufferedReader out = process.inputReader(StandardCharsets.UTF_8);
      return new BenchStudio(process, out.readLine().replaceAll(".*(http://[^/]*)/.*", "$1"));
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    }
  }

  private void workByAPlan() {
    String wanted =
        "{\"from\": \"" + BEGINS + "T00:00\", \"schedules\": " + SCHEDULES + ", \"seed\": 1}";
    String place =
        ask("POST", "/api/plans", wanted, "").headers().firstValue("Location").orElseThrow();
    while (ask("GET", place, "", "").body().matches("(?s).*\"state\": \"(waiting|running)\".*")) {
      pause();
    }
    String tag = ask("GET", "/api/book", "", "").headers().firstValue("ETag").orElseThrow();
    ask("POST", place + "/accept", "", tag);
  }

  private static void pause() {
    try {
      Thread.sleep(200);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  /** Its address, without a slash at the end. */
  String address() {
    return address;
  }

  private HttpResponse<String> ask(String method, String path, String body, String match) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address + path))
            .header("Content-Type", "application/json")
            .method(method, HttpRequest.BodyPublishers.ofString(body));
    if (!match.isEmpty()) {
      request.header("If-Match", match);
    }
    try {
      HttpResponse<String> answer =
          client.send(request.build(), HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() >= 400) {
        throw new IllegalStateException(
            method + " " + path + " was answered with " + answer.body());
      }
      return answer;
    } catch (IOException cannot) {
      throw new UncheckedIOException(cannot);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  @Override
  public void close() {
    process.destroy();
    try {
      process.waitFor();
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }
}
