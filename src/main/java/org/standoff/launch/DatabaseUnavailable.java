package org.standoff.launch;

/** The embedded PostgreSQL did not start; the message says to the person at the desk what to do. */
public final class DatabaseUnavailable extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private static final String GIVE_A_SERVER =
      "or give a PostgreSQL server: QUARKUS_DATASOURCE_JDBC_URL=jdbc:postgresql://host:5432/standoff"
          + " with QUARKUS_DATASOURCE_USERNAME and QUARKUS_DATASOURCE_PASSWORD."
          + " Calculations answer meanwhile; what needs stored kit does not.";

  private DatabaseUnavailable(String message, Throwable cause) {
    super(message, cause);
  }

  static DatabaseUnavailable because(Exception cause, boolean asRoot) {
    String remedy =
        asRoot
            ? "PostgreSQL refuses to run as root, and where this system forbids user namespaces (most"
                + " containers do) there is no way round that. Run Standoff as a plain user (in a"
                + " container: USER 185), "
            : "Look whether the data folder can be written and has room, ";
    return new DatabaseUnavailable(
        "The embedded PostgreSQL did not start. " + remedy + GIVE_A_SERVER, cause);
  }

  static DatabaseUnavailable inUse(String folder) {
    return new DatabaseUnavailable(
        "The data folder '"
            + folder
            + "' is in use by another running Standoff. End that one, choose another folder with"
            + " STANDOFF_DATA_FOLDER, "
            + GIVE_A_SERVER,
        null);
  }
}
