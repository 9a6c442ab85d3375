// Nothing is called from Swift; see shim.cpp.
