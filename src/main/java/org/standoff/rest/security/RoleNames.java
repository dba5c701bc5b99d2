package org.standoff.rest.security;

/** The roles as annotations want them; a test holds them to {@link org.standoff.kit.Role}. */
public final class RoleNames {

  public static final String PUBLISHER = "publisher";
  public static final String BOOKER = "booker";
  public static final String ADMIN = "admin";

  private RoleNames() {}
}
