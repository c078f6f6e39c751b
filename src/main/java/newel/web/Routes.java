package newel.web;

import io.javalin.config.RoutesConfig;

/** The paths of one feature and what answers them. */
public interface Routes {
    void add(RoutesConfig routes);
}
