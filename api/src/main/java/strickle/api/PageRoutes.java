package strickle.api;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.Optional;
import strickle.store.StoreTrouble;
import strickle.store.StudioStore;
import strickle.web.Asks;
import strickle.web.Page;
import strickle.web.PageFile;

/**
 * Gives the files of the page. They are no operations of the contract: the page is one more caller
 * of it. Names are looked up in a list; no path that is asked for reaches the file system.
 */
final class PageRoutes {

  private static final String KEPT = "public, max-age=31536000, immutable";

  private final Access access;

  private PageRoutes(Access access) {
    this.access = access;
  }

  /**
   * Adds its addresses: the first one, the rooms with all that stands below them, and the files.
   *
   * @param access says whether a studio is open to the reader, which the document then asks for;
   *     the document itself is for anybody
   */
  static void add(JavalinConfig config, Access access) {
    PageRoutes page = new PageRoutes(access);
    add(config, "/", context -> page.document(context, ""));
    add(config, "/page/{print}/<name>", PageRoutes::file);
    for (String room : Page.now().rooms()) {
      add(config, "/" + room, context -> page.document(context, room));
      add(config, "/" + room + "/<rest>", context -> page.document(context, room));
    }
  }

  private static void add(JavalinConfig config, String path, Handler handler) {
    config.routes.get(path, handler);
    config.routes.head(path, handler);
  }

  private void document(Context context, String room) {
    Page page = Page.now();
    PageFile document =
        page.document(room, asks(context))
            .orElseThrow(() -> Refusal.notThere("room " + room + " any more"));
    context.header("Content-Security-Policy", page.policy());
    give(context, document); // under what the gate says: each reader may have another
  }

  // The page can be had, and says what is wrong, also when the database is in trouble.
  private Asks asks(Context context) {
    try {
      return access.admitted(context).map(PageRoutes::asks).orElse(Asks.NOTHING);
    } catch (Refusal | StoreTrouble closed) {
      return Asks.NOTHING;
    }
  }

  private static Asks asks(StudioStore studio) {
    return PresentPlan.isAnyIn(studio.now()) ? Asks.STUDIO_AND_PLAN : Asks.STUDIO;
  }

  private static void file(Context context) {
    Page page = Page.now();
    String name = context.pathParam("name");
    PageFile file =
        page.file(name)
            .filter(found -> page.print().equals(context.pathParam("print")))
            .orElseThrow(() -> Refusal.notThere("such file of the page"));
    context.header("Cache-Control", KEPT);
    context.header("Vary", "Accept-Encoding");
    give(context, file);
  }

  private static void give(Context context, PageFile file) {
    String tag = '"' + file.print().substring(0, 32) + '"';
    Optional<String> known =
        Optional.ofNullable(context.header("If-None-Match"))
            .flatMap(header -> Etag.known(header, tag));
    if (known.isPresent()) {
      context.header("ETag", known.get());
      context.status(Status.UNCHANGED);
      return;
    }
    context.contentType(file.mediaType());
    if (Packing.isTaken(Optional.ofNullable(context.header("Accept-Encoding")))) {
      context.header("ETag", Etag.packed(tag));
      context.header("Content-Encoding", "gzip");
      context.result(file.packed());
    } else {
      context.header("ETag", tag);
      context.result(file.bytes());
    }
  }
}
