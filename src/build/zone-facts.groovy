// Writes the class that rules match on: one getter for each fact of the dictionary, so that a rule that
// misspells a fact does not compile. Run by the build (generate-sources); never edited by hand.
def facts = new groovy.json.JsonSlurper().parse(
    new File(project.basedir, 'src/main/resources/underhold/site/facts.json'), 'UTF-8').facts
def folder = new File(project.build.directory as String, 'generated-sources/facts/underhold/advice')
folder.mkdirs()
def out = new StringBuilder('''package underhold.advice;

import org.jspecify.annotations.Nullable;
import underhold.site.FactView;

/** The facts of one zone as rules see them; an unknown fact is null and meets no comparison. */
public final class ZoneFacts extends ZoneFactsBase {
  ZoneFacts(FactView view, Limits limits) {
    super(view, limits);
  }
''')
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
def file = new File(folder, 'ZoneFacts.java')
if (!file.exists() || file.getText('UTF-8') != out.toString()) {
  file.setText(out.toString(), 'UTF-8')
}
project.addCompileSourceRoot(new File(project.build.directory as String, 'generated-sources/facts').path)
