# SPDX-License-Identifier: MIT
# An overlay port that installs the headers from this source tree:
#   vcpkg install bifolium --overlay-ports=<source>/cmake/recipes/vcpkg
# Written by the documentation of vcpkg; a test runs it with stand-ins for vcpkg's functions, as vcpkg itself was not at hand.
get_filename_component(source "${CMAKE_CURRENT_LIST_DIR}/../../../.." ABSOLUTE)

set(VCPKG_BUILD_TYPE release) # headers are the same in all builds
vcpkg_cmake_configure(SOURCE_PATH "${source}" OPTIONS -DBUILD_TESTING=OFF -DBIFOLIUM_INSTALL_CMAKEDIR=share/bifolium)
vcpkg_cmake_install()
vcpkg_cmake_config_fixup()
vcpkg_fixup_pkgconfig()
file(REMOVE_RECURSE "${CURRENT_PACKAGES_DIR}/share/doc")
vcpkg_install_copyright(FILE_LIST "${source}/cmake/LICENSE")
