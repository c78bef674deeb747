package underhold.shell;

import java.io.PrintWriter;
import java.util.function.Function;
import java.util.function.Supplier;
import underhold.advice.RulePack;
import underhold.report.Json;
import underhold.report.Look;
import underhold.report.Plain;

/**
 * Where a command writes: answers to one place, messages to another.
 *
 * @param answers the answer and nothing else
 * @param trees the same place for JSON, which is always UTF-8
 * @param messages what is to be said beside it
 * @param look how texts are laid out
 * @param json whether answers are JSON
 * @param heading what stands above answers that do not rest on the rules built in
 */
record Output(
    PrintWriter answers,
    PrintWriter trees,
    PrintWriter messages,
    Look look,
    boolean json,
    PackHeading heading) {

  Output(PrintWriter answers, PrintWriter trees, PrintWriter messages, Look look, boolean json) {
    this(answers, trees, messages, look, json, PackHeading.NONE);
  }

  /** The same places with what one command line asks for. */
  Output with(boolean wantsJson, boolean wantsNoColour) {
    Look plainer = new Look(look.width(), look.colour() && !wantsNoColour, look.charset());
    return new Output(answers, trees, messages, plainer, wantsJson, heading);
  }

  /** The same places for answers by the rules of a pack. */
  Output by(RulePack pack) {
    return new Output(answers, trees, messages, look, json, new PackHeading(pack));
  }

  /** The same places for an answer that itself says which rules it speaks of. */
  Output bare() {
    return new Output(answers, trees, messages, look, json, PackHeading.NONE);
  }

  /** Writes the answer, as text or as JSON; only the form wanted is made. */
  void answer(Function<Look, String> text, Supplier<Object> tree) {
    if (json) {
      tree(tree.get());
    } else {
      print(text.apply(look));
    }
  }

  /** Writes an answer in JSON. */
  void tree(Object tree) {
    print(Json.text(heading.on(tree)));
  }

  /** Writes a text that is an answer. */
  void print(String text) {
    PrintWriter place = json ? trees : answers;
    place.print(json ? text : Plain.in(look.charset(), safe(heading.take(look) + text)));
    place.flush();
  }

  /** Shows a page that is no answer. */
  void show(String page) {
    messages.print(Plain.in(look.charset(), safe(page)));
    messages.flush();
  }

  /** Says something that is no answer, in one line however long. */
  void say(String message) {
    messages.println(Plain.in(look.charset(), Printable.line(message)));
    messages.flush();
  }

  /** What a page quotes from files and command lines moves no cursor. */
  private String safe(String page) {
    return Printable.page(page, look.colour());
  }
}
