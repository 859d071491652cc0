# What is installed: the program, its manual page, the library both ways, the header, rules, samples, and what other
# builds find the library by. Then the Debian package.
set(CMAKE_SKIP_INSTALL_ALL_DEPENDENCY ON) # installing builds no tests
include(GNUInstallDirs)
include(CMakePackageConfigHelpers)

set(library_rooms review intake judge report calc tables finding rulebook design yaml measure base)
list(TRANSFORM library_rooms PREPEND room_)
set(archives ${library_rooms})
list(TRANSFORM archives REPLACE "(.+)" "$<TARGET_FILE:\\1>")
set(parts -Wl,--whole-archive ${archives} -Wl,--no-whole-archive)

# Shared. Nothing can be reached in it but what the header exports.
file(WRITE ${CMAKE_BINARY_DIR}/empty.c "typedef int empty;\n")
add_library(library SHARED ${CMAKE_BINARY_DIR}/empty.c)
target_link_libraries(library PRIVATE ${parts} PkgConfig::YAML PkgConfig::LUA PkgConfig::JANSSON PkgConfig::XML PkgConfig::NETTLE
  ${GEOS_C} m)
add_dependencies(library ${library_rooms})
set_target_properties(library PROPERTIES OUTPUT_NAME plumbrule EXPORT_NAME plumbrule VERSION ${PROJECT_VERSION}
  SOVERSION 0 LINK_DEPENDS "${archives}")
target_include_directories(library INTERFACE $<INSTALL_INTERFACE:${CMAKE_INSTALL_INCLUDEDIR}>)

# Static: all rooms in one object, whose hidden symbols are then its own.
set(static_library ${CMAKE_BINARY_DIR}/libplumbrule.a)
add_custom_command(OUTPUT ${static_library} DEPENDS ${library_rooms} VERBATIM
  COMMAND ${CMAKE_LINKER} -r -o plumbrule-whole.o --whole-archive ${archives}
  COMMAND ${CMAKE_OBJCOPY} --localize-hidden plumbrule-whole.o
  COMMAND ${CMAKE_COMMAND} -E rm -f ${static_library}
  COMMAND ${CMAKE_AR} rcs ${static_library} plumbrule-whole.o)
set(manual ${CMAKE_BINARY_DIR}/plumbrule.1)
add_custom_command(OUTPUT ${manual} DEPENDS plumbrule VERBATIM
  COMMAND plumbrule --manual > ${manual})
add_custom_target(installed_parts ALL DEPENDS ${static_library} ${manual})

file(RELATIVE_PATH header_folder ${CMAKE_INSTALL_FULL_LIBDIR}/pkgconfig ${CMAKE_INSTALL_FULL_INCLUDEDIR})
set(package_folder ${CMAKE_INSTALL_LIBDIR}/cmake/plumbrule)
configure_file(${CMAKE_SOURCE_DIR}/.cmake/plumbrule.pc.in plumbrule.pc @ONLY)
configure_package_config_file(${CMAKE_SOURCE_DIR}/.cmake/config.cmake.in plumbruleConfig.cmake
  INSTALL_DESTINATION ${package_folder} PATH_VARS CMAKE_INSTALL_LIBDIR CMAKE_INSTALL_INCLUDEDIR)
write_basic_package_version_file(plumbruleConfigVersion.cmake COMPATIBILITY SameMinorVersion)

install(TARGETS plumbrule RUNTIME)
install(TARGETS library EXPORT plumbrule LIBRARY)
install(FILES ${static_library} DESTINATION ${CMAKE_INSTALL_LIBDIR})
install(DIRECTORY include/plumbrule DESTINATION ${CMAKE_INSTALL_INCLUDEDIR})
install(FILES ${manual} DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
install(DIRECTORY rules samples DESTINATION ${CMAKE_INSTALL_DATADIR}/plumbrule PATTERN "*.sh" EXCLUDE)
install(FILES README.md LICENSE DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES ${CMAKE_BINARY_DIR}/plumbrule.pc DESTINATION ${CMAKE_INSTALL_LIBDIR}/pkgconfig)
install(EXPORT plumbrule NAMESPACE plumbrule:: DESTINATION ${package_folder})
install(FILES ${CMAKE_BINARY_DIR}/plumbruleConfig.cmake ${CMAKE_BINARY_DIR}/plumbruleConfigVersion.cmake
  DESTINATION ${package_folder})

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME plumbrule)
set(CPACK_PACKAGE_VENDOR "the Plumbrule authors")
set(CPACK_PACKAGE_CONTACT "the Plumbrule authors <plumbrule@localhost>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "holds a rooftop-solar design against the rulebook of its town")
set(CPACK_RESOURCE_FILE_LICENSE ${CMAKE_SOURCE_DIR}/LICENSE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_STRIP_FILES ON)
include(CPack)
