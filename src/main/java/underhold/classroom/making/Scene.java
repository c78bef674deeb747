package underhold.classroom.making;

/**
 * The words of a site in the making.
 *
 * @param digs what is to be dug and where: a sentence
 * @param stands what stands there and who uses it: a sentence
 * @param zone what the element is called: {@code party wall}
 * @param element the element in a sentence: {@code the wall}
 */
record Scene(String digs, String stands, String zone, String element) {}
