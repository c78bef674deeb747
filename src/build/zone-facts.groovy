// Writes the classes that rules match on: one getter for each fact of a dictionary, so that a rule that
// misspells a fact does not compile. Run by the build (generate-sources); never edited by hand.
def folder = new File(project.build.directory as String, 'generated-sources/facts/underhold/advice')
folder.mkdirs()

def write = { String dictionary, String type, String comment ->
  def facts = new groovy.json.JsonSlurper().parse(
      new File(project.basedir, "src/main/resources/underhold/site/${dictionary}"), 'UTF-8').facts
  def out = new StringBuilder("""package underhold.advice;

import org.jspecify.annotations.Nullable;
import underhold.site.FactView;

/** ${comment} */
public final class ${type} extends ZoneFactsBase {
  ${type}(FactView view, Limits limits) {
    super(view, limits);
  }
""")
  facts.eachWithIndex { fact, index ->
    def number = fact.kind in ['quantity', 'slope']
    def name = fact.name.capitalize()
    out << """
  public @Nullable ${number ? 'Double' : 'String'} get${name}() {
    return ${number ? 'number' : 'word'}(${index});
  }
"""
  }
  out << '}\n'
  def file = new File(folder, "${type}.java")
  if (!file.exists() || file.getText('UTF-8') != out.toString()) {
    file.setText(out.toString(), 'UTF-8')
  }
}

write('facts.json', 'ZoneFacts',
    'The facts of one zone as rules see them; an unknown fact is null and meets no comparison.')
write('pair-facts.json', 'PairFacts',
    'What is known of two zones together, as the rules between zones see it; an unknown fact is null.')
project.addCompileSourceRoot(new File(project.build.directory as String, 'generated-sources/facts').path)
