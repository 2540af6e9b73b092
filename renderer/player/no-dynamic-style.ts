// Read by video.js while it loads, so this module comes first: without it the player writes <style> elements,
// which the content security policy refuses.
(window as Window & { VIDEOJS_NO_DYNAMIC_STYLE?: boolean }).VIDEOJS_NO_DYNAMIC_STYLE = true;
