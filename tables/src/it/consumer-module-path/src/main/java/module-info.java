/** core and tables are automatic modules, and those do not pull in named ones: Jackson has to be asked for. */
module consumer {
    requires com.fasterxml.jackson.databind;
    requires org.satline.core;
    requires org.satline.tables;
}
